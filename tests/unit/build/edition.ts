/** The record of an output of these files; `name` tells one edition from another. */
export function editionRecord(name: string, files = ['public/a.txt', 'private/deep/b.txt']): string {
  return JSON.stringify({ version: 1, name, files: Object.fromEntries(files.map((file) => [file, {}])) });
}
