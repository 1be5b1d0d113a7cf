import type { Mark } from '../../engine/kitchen/mark.ts';
import { controlFinding, placeInText } from '../files/plain-text.ts';
import { type SvgElement, svgElements } from '../files/svg-elements.ts';
import { type Finding, finding } from '../findings/finding.ts';
import { quoted } from '../findings/quoted.ts';

/** In characters: a drawing of many hundred strokes. */
const LARGEST = 64 * 1024;

/** What draws and nothing else: no script, no foreign content, no motion, no letters, whose font is nobody's here. */
const DRAWS: ReadonlySet<string> = new Set(
  `svg g defs title desc path rect circle ellipse line polyline polygon use symbol clipPath mask pattern
  linearGradient radialGradient stop`.split(/\s+/),
);

const NAMESPACES: Readonly<Record<string, string>> = {
  xmlns: 'http://www.w3.org/2000/svg',
  'xmlns:xlink': 'http://www.w3.org/1999/xlink',
};

/**
 * A kitchen's mark, checked by a list of what may stand in it: plain shapes and fills, nothing that runs, loads or
 * leads anywhere. `path` names it in findings.
 */
export function checkMark(file: string, text: string): { mark: Mark | undefined; findings: Finding[] } {
  const refuse = (at: number, what: string, wayOut: string) => ({
    mark: undefined,
    findings: [finding('mark-form', placeInText(file, text, at), what, wayOut)],
  });
  if (text.length > LARGEST) {
    const what = `the drawing has ${text.length.toLocaleString('en-US')} characters`;
    return refuse(0, what, 'save it as plain SVG with fewer points; 65,536 is the most');
  }
  const control = controlFinding(file, text);
  if (control) return { mark: undefined, findings: [control] };
  const read = svgElements(text);
  if ('what' in read) return refuse(read.at, read.what, 'save it as plain SVG again');
  const [root] = read.elements;
  if (root?.name !== 'svg' || root.attributes.get('xmlns') !== NAMESPACES.xmlns) {
    return refuse(
      0,
      'this is not an SVG drawing',
      `start it with <svg xmlns="${NAMESPACES.xmlns}" viewBox="0 0 64 64">`,
    );
  }
  const findings = read.elements.flatMap((element) =>
    problemsOf(element).map(({ what, wayOut }) =>
      finding('mark-unsafe', placeInText(file, text, element.at), what, wayOut),
    ),
  );
  if (findings.length > 0) return { mark: undefined, findings };
  const size = sizeOf(root);
  if (!size) {
    const what = 'the drawing does not state its size';
    return refuse(
      root.at,
      what,
      'write viewBox="0 0 64 64" on <svg>, with its own width and height, at most 8 to 1',
    );
  }
  return { mark: { svg: text, ...size }, findings };
}

/** Everything in a tag that no mark may have. */
function problemsOf({ name, attributes }: SvgElement): { what: string; wayOut: string }[] {
  if (!DRAWS.has(name)) {
    const letters = name === 'text' || name === 'tspan';
    return [
      {
        what: `a mark can’t contain <${name}>`,
        wayOut: letters ? 'convert its letters to paths' : 'remove it, or save the drawing as plain SVG',
      },
    ];
  }
  return [...attributes].flatMap(([key, value]) => {
    const wrong = attributeProblem(key, value);
    return wrong === undefined
      ? []
      : [{ what: `${quoted(`${key}="${value}"`)} ${wrong}`, wayOut: 'remove it' }];
  });
}

function attributeProblem(key: string, value: string): string | undefined {
  if (!/^[A-Za-z_][\w.:-]*$/.test(key)) return 'does not belong in a drawing';
  if (/^xmlns(?::|$)/.test(key))
    return NAMESPACES[key] === value ? undefined : 'does not belong in a drawing';
  if (/^on/i.test(key)) return 'would run a script';
  if (/^(?:xlink:)?href$/.test(key))
    return /^#[\w.-]+$/.test(value) ? undefined : 'points outside the drawing';
  // Escapes of CSS could spell any of these words otherwise.
  if (/\\|\/\*|@|expression|javascript:|data:|\/\/|image|src\(/i.test(value)) return 'could load something';
  const loaded = value.replace(/url\(\s*(["']?)#[\w.-]+\1\s*\)/gi, '');
  if (/url/i.test(loaded) && key !== 'id' && key !== 'class') return 'could load something';
  return key.includes(':') && key !== 'xml:space' ? 'does not belong in a drawing' : undefined;
}

/** The proportions of the paper, from `viewBox`; a strip thinner than one to eight is no mark. */
function sizeOf({ attributes }: SvgElement): { width: number; height: number } | undefined {
  const numbers = (attributes.get('viewBox') ?? '').trim().split(/[\s,]+/);
  if (numbers.length !== 4 || !numbers.every((each) => /^-?\d{1,6}(?:\.\d{1,6})?$/.test(each)))
    return undefined;
  const [, , width = 0, height = 0] = numbers.map(Number);
  return width > 0 && height > 0 && width <= 8 * height && height <= 8 * width
    ? { width, height }
    : undefined;
}
