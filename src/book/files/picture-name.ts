/** A file name that stands for a picture. */
export const PICTURE = /\.(?:jpe?g|png|webp|avif)$/i;
