/** Markdown of a letter → HTML. `pictureUrl` says where a local picture is served; without it pictures become their alternative text. */
export function letterHtml(markdown: string, pictureUrl?: (src: string) => string): string {
  throw new Error(`${markdown.length} ${pictureUrl}`);
}
