/**
 * What of decimal.js no sum of money needs: functions of angles, logarithms, roots and powers, other bases, chance.
 * Their methods hang on one object, so that no bundler can see that nobody calls them.
 */
export const LEFT_OUT: ReadonlySet<string> = new Set(
  `acos acosh asin asinh atan atan2 atanh cbrt cos cosh cosine cubeRoot exp hyperbolicCosine hyperbolicSine
  hyperbolicTangent hypot inverseCosine inverseHyperbolicCosine inverseHyperbolicSine inverseHyperbolicTangent
  inverseSine inverseTangent ln log log10 log2 logarithm naturalExponential naturalLogarithm pow random sin sine sinh
  sqrt squareRoot tan tangent tanh toBinary toFraction toHex toHexadecimal toNearest toOctal toPower`.split(
    /\s+/,
  ),
);

/** A method, from its name at the beginning of a line to the brace that closes it at the beginning of another. */
const METHOD = /^P\.(\w+) = (?:P\.\w+ = )?function [\s\S]*?^};\r?\n/gm;
const FUNCTION_OF_THE_CLASS = /^ {2}Decimal\.(\w+) = \w+;.*\r?\n/gm;

/**
 * The source of decimal.js without them; the functions that only they called then fall to the bundler. Throws where
 * the source is written in another way, as another version of the library might be.
 */
export function leanDecimal(source: string): string {
  let left = 0;
  const without = (all: string, name: string) => {
    if (!LEFT_OUT.has(name)) return all;
    left += 1;
    return '';
  };
  const lean = source.replace(METHOD, without).replace(FUNCTION_OF_THE_CLASS, without);
  if (left < 40) throw new Error('decimal.js has changed: look at src/build/lean-decimal.ts');
  return lean;
}

/** Has the client's page carry the lean form; all that runs in this process keeps the whole library. */
export function leanDecimalPlugin() {
  return {
    name: 'salver-lean-decimal',
    applyToEnvironment: ({ name }: { name: string }) => name === 'client',
    transform: (code: string, id: string) =>
      /decimal\.js\/decimal\.mjs$/.test(id) ? { code: leanDecimal(code), map: null } : null,
  };
}
