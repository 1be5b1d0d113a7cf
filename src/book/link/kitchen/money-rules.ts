import type { z } from 'zod';
import { parseDaysBefore } from '../../../engine/calendar/offset.ts';
import { type Instalment, instalmentProblems, parseInstalment } from '../../../engine/money/instalments.ts';
import { parseRate, rateText } from '../../../engine/money/rate.ts';
import { notParsed, type Parsed, parsed } from '../../../engine/parsed.ts';
import { isCalledGratuity } from '../../../engine/quote/service-charge.ts';
import type { GuaranteeTerms, MaybeNamed, ServiceChargeTerms } from '../../../engine/quote/terms.ts';
import type { guaranteeSchema, serviceChargeSchema } from '../../../schema/money-rules.ts';
import { asFinding } from '../../findings/words.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkLineClasses } from './line-classes.ts';

/** What holds where neither kitchen nor proposal says a guarantee. */
export const DEFAULT_GUARANTEE: GuaranteeTerms = { daysBefore: 7, floorRate: '100 %' };

/** The mandatory charge; null for none and for 0 %. A label that calls it a gratuity is refused. */
export function linkServiceCharge(
  reading: Reading,
  text: z.infer<typeof serviceChargeSchema> | undefined,
): MaybeNamed<ServiceChargeTerms> | null {
  if (text === undefined) return null;
  const path = ['service charge'];
  const rate = reading.understand([...path, 'rate'], text.rate, parseRate);
  const { label } = text;
  if (label !== undefined && isCalledGratuity(label)) {
    const what = `the service charge is called “${label}”, but a mandatory charge is not a gratuity`;
    reading.say('not-understood', [...path, 'label'], what, 'call it a service charge');
  }
  const base = linkLineClasses(reading, [...path, 'on'], text.on);
  if (rate === undefined || rate.isZero()) return null;
  return { label, rate: rateText(rate), base, afterDiscount: text['after discount'] !== 'no' };
}

/** The guarantee: what a proposal leaves out is the kitchen's. */
export function linkGuarantee(
  reading: Reading,
  text: z.infer<typeof guaranteeSchema> | undefined,
  otherwise: GuaranteeTerms,
): GuaranteeTerms {
  const deadline = text?.deadline;
  const floor = text?.floor;
  const days = deadline && reading.understand(['guarantee', 'deadline'], deadline, parseDeadline);
  const rate = floor && reading.understand(['guarantee', 'floor'], floor, parseFloor);
  return {
    daysBefore: days || days === 0 ? days : otherwise.daysBefore,
    floorRate: rate || otherwise.floorRate,
  };
}

/** The payment schedule; what is wrong with it as a whole is told at the field. */
export function linkPayments(
  reading: Reading,
  texts: readonly string[] | undefined,
  currency: string,
): Instalment[] | undefined {
  if (texts === undefined) return undefined;
  const instalments = texts.flatMap((text, index) => {
    const read = reading.understand(['payments', index], text, (words) => parseInstalment(words, currency));
    return read === undefined ? [] : [read];
  });
  if (instalments.length < texts.length) return undefined;
  for (const problem of instalmentProblems(instalments)) {
    const { what, wayOut } = asFinding(problem);
    reading.say('payments-sum', ['payments'], what, wayOut, 'key');
  }
  return instalments;
}

function parseDeadline(text: string): Parsed<number> {
  const days = parseDaysBefore(text);
  if (!days.ok || days.value >= 0) return days;
  return notParsed(`“${text}” is after the event`, 'write for example "7 days before"');
}

function parseFloor(text: string): Parsed<string> {
  const rate = parseRate(text);
  if (!rate.ok) return rate;
  return rate.value.gt(1)
    ? notParsed(`a minimum of ${text} is more than the accepted count`, 'write a percentage up to 100 %')
    : parsed(rateText(rate.value));
}
