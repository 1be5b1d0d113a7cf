const types: Record<string, string> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
  ics: 'text/calendar; charset=utf-8',
  json: 'application/json',
  pdf: 'application/pdf',
  woff2: 'font/woff2',
  woff: 'font/woff',
  svg: 'image/svg+xml',
  png: 'image/png',
  jpg: 'image/jpeg',
  webp: 'image/webp',
};

/** The media type of a file by its ending, as a browser wants to be told; a stylesheet of another type is refused. */
export function mediaType(path: string): string {
  const ending = path.split('.').at(-1) ?? '';
  return Object.hasOwn(types, ending) ? types[ending]! : 'application/octet-stream';
}
