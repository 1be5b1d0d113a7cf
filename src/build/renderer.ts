import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { digestOf } from '../files/digest.ts';
import type { ProposalPage } from '../views/client/proposal-page.ts';
import { proposalView } from '../views/client/proposal-view-of.ts';
import { type ClientAssets, readClientAssets } from './client-assets.ts';
import type { CompiledApp } from './compile-app.ts';
import { asPublished, withPolicy } from './page-html.ts';

/** One page as it is published. */
export interface FinishedPage {
  content: Uint8Array<ArrayBuffer>;
  /** What it needs beside it, as a `FileRecord` has it. */
  assets: string[];
  /** Of the content. */
  digest: string;
}

/** The compiled app, opened. A view comes as its JSON. */
export interface Renderer {
  /** Of the app and its settings: the same view under the same digest gives the same bytes. */
  digest: string;
  assets: ClientAssets;
  /** One page as a whole document with its security policy. Fails, naming the route, if it does not come out. */
  render(route: string, view: string): Promise<string>;
  /** One page as it lies at `file` of the output: plain scripts, and addresses that begin at the page. */
  page(file: string, route: string, view: string): Promise<FinishedPage>;
  /** The same of a proposal, whose view is made here too. */
  proposal(file: string, route: string, source: ProposalPage): Promise<FinishedPage>;
}

/** The server entry's one function; see `server-entry.ts`. */
interface ServerEntry {
  render(request: Request, locals: object): Promise<Response>;
}

/** No page depends on where it is served; the name can never be a real one (RFC 2606). */
export const renderOrigin = 'http://salver.invalid';

/** Loads the compiled app in this thread, once for any number of pages. `pdfs`: whether documents will lie beside them. */
export async function openRenderer(app: CompiledApp, { pdfs }: { pdfs: boolean }): Promise<Renderer> {
  const entry = (await import(pathToFileURL(join(app.dir, 'server', 'entry.mjs')).href)) as ServerEntry;
  const assets = await readClientAssets(app.dir);
  async function render(route: string, view: unknown): Promise<string> {
    const response = await entry.render(new Request(renderOrigin + route), { view, pdfs });
    const html = await response.text();
    if (response.status !== 200) {
      // Our middleware answers a page that fails with its reason; any other answer is a page of Astro's own.
      const reason = response.status === 500 && html !== '' ? html : `status ${response.status}`;
      throw new Error(`the page ${route} could not be made: ${reason}`);
    }
    const policy = response.headers.get('content-security-policy');
    if (!policy) throw new Error(`the page ${route} came out without its security policy`);
    if (html.includes('"/_image?'))
      throw new Error(`the page ${route} names a picture that was not prepared`);
    return withPolicy(html, policy);
  }
  async function finished(file: string, route: string, view: unknown): Promise<FinishedPage> {
    const page = await render(route, view);
    const { html, brandFiles } = asPublished(page, file);
    const content = new TextEncoder().encode(html);
    return { content, assets: [...assets.neededBy(page), ...brandFiles], digest: digestOf(content) };
  }
  return {
    digest: digestUnder(app, pdfs),
    assets,
    render: (route, view) => render(route, JSON.parse(view)),
    page: (file, route, view) => finished(file, route, JSON.parse(view)),
    proposal: (file, route, source) => finished(file, route, proposalView(source)),
  };
}

/** The digest of an app opened with or without PDFs. */
export function digestUnder(app: CompiledApp, pdfs: boolean): string {
  return `${app.digest}${pdfs ? ' with PDFs' : ''}`;
}
