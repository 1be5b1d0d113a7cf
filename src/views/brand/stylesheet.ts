/** Where the stylesheet of an accent colour is served; `#7a4a2b` has `/brand-7a4a2b.css`. */
export function brandStylesheetPath(accent: string): string {
  return `/brand-${channelsOf(accent)
    .map((value) => value.toString(16).padStart(2, '0'))
    .join('')}.css`;
}

/**
 * The one colour that a caterer chooses, as custom properties: the accent itself, a shade of it dark enough for
 * words on white, one light enough for words on dark paper, and black or white for words on it. A file of its own, since the security policy allows no
 * styles inside a page.
 */
export function brandStylesheet(accent: string): string {
  const colour = channelsOf(accent);
  const onAccent = contrast(colour, white) >= contrast(colour, black) ? white : black;
  const lines = [
    `--accent: ${cssColour(colour)};`,
    `--accent-words: ${cssColour(readableOnWhite(colour))};`,
    `--accent-words-dark: ${cssColour(readableOnDark(colour))};`,
    `--on-accent: ${cssColour(onAccent)};`,
  ];
  return `:root {\n  ${lines.join('\n  ')}\n}\n`;
}

type Channels = [number, number, number];
const white: Channels = [255, 255, 255];
const black: Channels = [0, 0, 0];
/** The lightest of the dark papers of `src/styles/dark.css`. */
const darkPaper: Channels = [36, 33, 30];

/** Red, green and blue of `#rrggbb`; fails for anything else, since it ends in a stylesheet and a file's name. */
function channelsOf(accent: string): Channels {
  if (!/^#[0-9a-f]{6}$/i.test(accent)) throw new Error(`'${accent}' is not a color such as #7a4a2b`);
  return [1, 3, 5].map((at) => Number.parseInt(accent.slice(at, at + 2), 16)) as Channels;
}

/** Darkened in steps of a twentieth until words in it reach 7 : 1 on white (WCAG 2.2, 1.4.6). */
function readableOnWhite(colour: Channels): Channels {
  let shade = colour;
  while (contrast(shade, white) < 7) shade = shade.map((value) => Math.floor(value * 0.95)) as Channels;
  return shade;
}

/** Lightened in steps of a twentieth of what is left to white until words in it reach 7 : 1 on dark paper. */
function readableOnDark(colour: Channels): Channels {
  let shade = colour;
  while (contrast(shade, darkPaper) < 7)
    shade = shade.map((value) => Math.ceil(value + (255 - value) * 0.05)) as Channels;
  return shade;
}

/** Contrast ratio of WCAG 2.2: (lighter + 0.05) / (darker + 0.05) of their relative luminances. */
export function contrast(one: Channels, other: Channels): number {
  const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(colour: Channels): number {
  const [red, green, blue] = colour.map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as Channels;
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function cssColour(colour: Channels): string {
  return `rgb(${colour.join(' ')})`;
}
