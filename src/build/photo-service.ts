import type { LocalImageService } from 'astro';
import sharpService from 'astro/assets/services/sharp';
import { photoPath } from './photo-name.ts';

/**
 * Astro's own image service, but for addresses: the app answers pages alone, so a photo is named as the file that
 * the build makes of it (`photo-file.ts`). The dev server makes it when it is asked, as ever.
 */
const service: LocalImageService = {
  ...sharpService,
  getURL(options, config, logger) {
    const { src, width } = options;
    if (import.meta.env.DEV || typeof src === 'string' || width === undefined)
      return sharpService.getURL(options, config, logger);
    return photoPath(src.src, width);
  },
};

export default service;
