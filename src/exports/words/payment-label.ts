import { displayMoney } from '../../engine/money/display-money.ts';
import type { Instalment } from '../../engine/money/instalments.ts';
import { money } from '../../engine/money/money.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { ScriptSay } from '../../words/script-words.ts';
import { percentText } from './percent-text.ts';

/** What a payment is and when it falls due, as the client reads it: `30% on acceptance`, `Balance 7 days before the event`. */
export function paymentLabel(
  say: ScriptSay,
  instalment: Instalment,
  terms: Pick<Terms, 'currency' | 'locale'>,
  rateText = (rate: string) => percentText(rate, terms.locale),
): string {
  const share = shareText(say, instalment, terms, rateText);
  const { due } = instalment;
  if (due === 'accepted') return say('pay.accepted', { share });
  return due < 0 ? say('pay.after', { share, n: -due }) : say('pay.before', { share, n: due });
}

function shareText(
  say: ScriptSay,
  instalment: Instalment,
  { currency, locale }: Pick<Terms, 'currency' | 'locale'>,
  rateText: (rate: string) => string,
): string {
  if (instalment.of === 'balance') return say('pay.balance');
  return instalment.of === 'rate'
    ? rateText(instalment.rate)
    : displayMoney(money(instalment.amount, currency), locale);
}
