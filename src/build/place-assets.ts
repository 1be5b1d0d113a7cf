import type { ClientAssets } from './client-assets.ts';
import type { Output } from './output.ts';

/**
 * Places what pages need beside them: styles, scripts, fonts and photos of the app. Pages that stay need those of the
 * app that made them, which are kept as they are.
 */
export async function placeAssets(output: Output, assets: ClientAssets): Promise<void> {
  for (const side of ['public', 'private'] as const) {
    for (const name of output.assetsOf(side)) {
      if (name.startsWith('/')) {
        // Made with the other files, unless only a page that stays still shows it.
        output.keep(`${side}${name}`);
        continue;
      }
      const file = `${side}/_astro/${name}`;
      const bytes = await assets.read(name);
      if (bytes) await output.placeBytes(file, bytes);
      else output.keep(file);
    }
  }
}
