import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';

/** The PDF beside the built page, if there is one. Fails where the page is not built, or shows another revision. */
export async function builtPage(
  folder: string,
  id: string,
  digest: string,
): Promise<Parsed<{ readonly pdf: Buffer | undefined }>> {
  if (!(await bytesOf(join(folder, 'index.html'))))
    return notParsed(`the page for ${id} has not been built`, 'run build first');
  const offer = await bytesOf(join(folder, 'offer.json'));
  if (offer && !offer.includes(digest))
    return notParsed(`the page built for ${id} shows another revision`, 'run build first');
  return parsed({ pdf: await bytesOf(join(folder, 'proposal.pdf')) });
}

async function bytesOf(file: string): Promise<Buffer | undefined> {
  return readFile(file).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
}
