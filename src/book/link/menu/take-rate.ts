import { convertFinishedFood } from '../../../engine/food/finished-food.ts';
import type { Recipe } from '../../../engine/food/recipe.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import type { PerGuest } from '../../../engine/measure/per-guest.ts';
import { Decimal } from '../../../engine/money/decimal.ts';
import { parseAppetite } from '../../../engine/odds/appetite.ts';
import { looksLikeRisk, parseRisk } from '../../../engine/odds/risk.ts';
import type { HelpingCosts, TakeRate } from '../../../engine/odds/take-rate.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import type { DishText } from '../../../schema/dish.ts';
import type { Path } from '../../files/place-of.ts';
import { moneyIn } from '../grammar/plain-grammars.ts';
import type { Reading } from '../grammar/reading.ts';

/** How guests take a dish; undefined where it is not stated, and then nothing is guessed. */
export function linkTakeRate(
  reading: Reading,
  path: Path,
  text: DishText,
  recipe: Recipe,
  perGuest: PerGuest,
  currency: string,
): TakeRate | undefined {
  const { appetite, overage, helping } = text;
  const firstChoice = text['first choice'];
  sayWhatIsMissing(reading, path, text);
  if (appetite === undefined && firstChoice === undefined) return undefined;
  sayWhatClashes(reading, path, text);
  return {
    appetite:
      appetite === undefined
        ? undefined
        : reading.understand([...path, 'appetite'], appetiteText(appetite), () => parseAppetite(appetite)),
    firstChoice:
      firstChoice === undefined
        ? undefined
        : reading.understand([...path, 'first choice'], firstChoice, parseFirstChoice),
    helping:
      helping === undefined
        ? undefined
        : reading.understand([...path, 'helping'], helping, (words) => helpingIn(words, recipe, perGuest)),
    shortOneIn:
      overage !== undefined && looksLikeRisk(overage)
        ? reading.understand([...path, 'overage'], overage, parseRisk)
        : undefined,
    costs: linkCosts(reading, path, text, currency),
  };
}

/** What rests on an appetite, or on each other, is of no use alone. */
function sayWhatIsMissing(reading: Reading, path: Path, text: DishText): void {
  const say = (field: string, what: string, wayOut: string) =>
    reading.say('odds-unsaid', [...path, field], what, wayOut, 'key');
  const { missing, 'left over': leftOver } = text;
  const wayOut = 'write for example “appetite: { none: 20 %, one: 55 %, two: 25 % }”';
  if (text.appetite === undefined) {
    const risk = text.overage !== undefined && looksLikeRisk(text.overage);
    if (risk) say('overage', 'a risk is set, but there is no appetite', wayOut);
    for (const field of ['helping', 'missing', 'left over'] as const)
      if (text[field] !== undefined && (field !== 'helping' || text['first choice'] === undefined))
        say(field, `“${field}” is set, but there is no appetite`, wayOut);
  } else if ((missing === undefined) !== (leftOver === undefined)) {
    const [said, unsaid] = missing === undefined ? ['left over', 'missing'] : ['missing', 'left over'];
    say(
      said,
      `the cost of a helping is given only for one that is ${said}`,
      `give “${unsaid}” too, or leave both out`,
    );
  }
}

function sayWhatClashes(reading: Reading, path: Path, text: DishText): void {
  const ways = (['appetite', 'first choice', 'others', 'held back'] as const).filter(
    (field) => text[field] !== undefined && text[field] !== 'no',
  );
  const [one, other] = ways;
  if (!one || !other) return;
  const what = `“${one}” and “${other}” both set who takes the dish`;
  reading.say('odds-clash', [...path, other], what, 'keep one of the two', 'key');
}

function appetiteText(appetite: Readonly<Record<string, string>>): string {
  return Object.entries(appetite)
    .map(([helpings, share]) => `${helpings}: ${share}`)
    .join(', ');
}

function parseFirstChoice(text: string): Parsed<NonNullable<TakeRate['firstChoice']>> {
  const share = parseShare(text);
  if (!share.ok || (share.value.n > 0n && share.value.lte(1n))) return share;
  return notParsed(
    `${text.slice(0, 40)} of the guests can’t take it first`,
    'write a percentage up to 100 %',
  );
}

function helpingIn(text: string, recipe: Recipe, perGuest: PerGuest): Parsed<TakeRate['helping']> {
  const read = parseQuantity(text);
  if (!read.ok) return read;
  const { unit } = perGuest.amount;
  const helping = convertFinishedFood(recipe, read.value, unit);
  return helping
    ? parsed(helping)
    : notParsed(`a helping is in ${read.value.unit}, but the amount is in ${unit}`, `write it in ${unit}`);
}

function linkCosts(reading: Reading, path: Path, text: DishText, currency: string): HelpingCosts | undefined {
  const { missing, 'left over': leftOver } = text;
  if (missing === undefined || leftOver === undefined) return undefined;
  const read = {
    missing: reading.understand([...path, 'missing'], missing, moneyIn(currency)),
    leftOver: reading.understand([...path, 'left over'], leftOver, moneyIn(currency)),
  };
  if (read.missing === undefined || read.leftOver === undefined) return undefined;
  if (new Decimal(read.missing).isZero() && new Decimal(read.leftOver).isZero()) {
    const what = 'both a missing helping and one left over cost nothing';
    reading.say(
      'not-understood',
      [...path, 'missing'],
      what,
      'leave both out, or give a cost for one of them',
    );
    return undefined;
  }
  return { missing: read.missing, leftOver: read.leftOver };
}
