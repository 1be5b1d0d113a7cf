/** Words that are the same for one and for many, or that only look like a plural. */
const UNCHANGING: ReadonlySet<string> = new Set([
  'asparagus',
  'brussels',
  'citrus',
  'couscous',
  'dozen',
  'each',
  'fish',
  'haggis',
  'hummus',
  'molasses',
  'octopus',
  'series',
]);

/** Plurals that no ending gives away, by their singular. */
const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['calf', 'calves'],
  ['half', 'halves'],
  ['knife', 'knives'],
  ['leaf', 'leaves'],
  ['loaf', 'loaves'],
  ['shelf', 'shelves'],
  ['brioche', 'brioches'],
  ['quiche', 'quiches'],
  ['shoe', 'shoes'],
  ['brownie', 'brownies'],
  ['cookie', 'cookies'],
  ['hoagie', 'hoagies'],
  ['pie', 'pies'],
  ['smoothie', 'smoothies'],
  ['bus', 'buses'],
  ['lens', 'lenses'],
  ['man', 'men'],
  ['woman', 'women'],
  ['person', 'people'],
]);

const SINGULARS: ReadonlyMap<string, string> = new Map([...IRREGULAR].map(([one, many]) => [many, one]));

/** Nouns in -o that take -es. */
const TAKES_ES: ReadonlySet<string> = new Set(['mango', 'potato', 'tomato']);

/** Applies `change` to the last of several words: `hotel pans` is many of `hotel pan`. */
function lastWord(words: string, change: (word: string) => string): string {
  const at = words.lastIndexOf(' ') + 1;
  return words.slice(0, at) + change(words.slice(at));
}

/**
 * A count word in lower case as one of it: `loaves` → `loaf`, `bunches` → `bunch`, `pieces` → `piece`,
 * `molasses` stays. English only; of several words the last changes. Doing it twice changes nothing more.
 */
export function singular(words: string): string {
  return lastWord(words, (word) => {
    const irregular = SINGULARS.get(word);
    if (irregular !== undefined) return irregular;
    if (UNCHANGING.has(word) || IRREGULAR.has(word) || word.length < 3) return word;
    if (word.endsWith('ss') || !word.endsWith('s')) return word;
    if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
    if (/(?:ch|sh|x|ss|zz|o)es$/.test(word)) return word.slice(0, -2);
    return word.slice(0, -1);
  });
}

/**
 * A count word as many of it, for printing: `loaf` → `loaves`, `bunch` → `bunches`. A word whose plural
 * `singular` would not lead back from is left as it is, so that print and grammar always agree.
 */
export function plural(words: string): string {
  return lastWord(words, (word) => {
    if (UNCHANGING.has(word)) return word;
    const many = IRREGULAR.get(word) ?? regularPlural(word);
    return singular(many) === word ? many : word;
  });
}

function regularPlural(word: string): string {
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  if (/(?:ch|sh|x|ss|zz)$/.test(word) || TAKES_ES.has(word)) return `${word}es`;
  return `${word}s`;
}
