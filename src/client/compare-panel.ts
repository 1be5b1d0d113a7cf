import { displayMoney } from '../engine/money/display-money.ts';
import { money } from '../engine/money/money.ts';
import { comparedMenus, comparedSums, type PricedSide } from '../views/client/proposal-choice-comparison.ts';
import { addOnField } from '../views/client/proposal-choice-fields.ts';
import { countRange, packageOf, proposedChoice, type Side } from '../views/client/proposal-choice-sides.ts';
import { crossingsOf, priceStepWords, runsOf, runWords } from '../views/client/proposal-choice-words.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import { changeText } from './changed-text.ts';
import { fillComparedTable } from './compared-table.ts';
import { elementIn } from './element-in.ts';
import { formTexts } from './form-texts.ts';
import { inSlices } from './in-slices.ts';
import { type Picture, pictureOf } from './picture.ts';
import { drawPicture, placePoints } from './picture-drawing.ts';
import { sayLater } from './say-later.ts';
import { menuKey, sidePrices } from './side-prices.ts';
import { makeSteppers } from './steppers.ts';
import { say } from './words.ts';

const LETTERS = ['a', 'b'] as const;
/** The widest span of guest counts that is drawn, each count calculated. */
const WIDEST = 600;

/** The part of the page that sets two menus side by side. */
export interface ComparePanel {
  readonly form: HTMLFormElement;
  /** Shows what the form's fields say now. */
  show(): void;
}

/** Brings the comparison to life. `choose` is called with a side that the client wants to take. */
export function comparePanel(
  form: HTMLFormElement,
  data: ClientTerms,
  choose: (side: Side) => void,
): ComparePanel {
  const prices = sidePrices(data);
  const announce = sayLater(elementIn(form, '[data-part="said"]', HTMLElement));
  const svg = elementIn(form, '[data-part="picture"]', SVGSVGElement);
  const body = elementIn(form, '[data-part="lines"]', HTMLTableSectionElement);
  /** The last count of each side that could be read, so that half a number changes nothing. */
  const counts: [number, number] = [1, 1];
  let picture: Picture | undefined;
  let drawn = '';
  let menusShown = '';
  let stop = () => {};

  makeSteppers(form);
  form.addEventListener('submit', (event) => event.preventDefault());
  form.addEventListener('input', ({ target }) => {
    if (target instanceof HTMLInputElement && target.type === 'range') {
      const field = countField(target.dataset.for ?? '');
      field.value = target.value;
    }
    show();
  });
  form.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest<HTMLElement>('[data-choose]') : null;
    if (button) choose(sides()[button.dataset.choose === 'b' ? 1 : 0]);
  });
  new ResizeObserver(() => {
    const width = svg.clientWidth;
    if (width > 0 && drawn !== '' && width !== Number(svg.dataset.width)) drawCurves();
  }).observe(svg);

  function countField(letter: string): HTMLInputElement {
    return elementIn(form, `[name="${letter}.guests"]`, HTMLInputElement);
  }

  function sides(): [Side, Side] {
    const texts = formTexts(form);
    const side = (letter: 'a' | 'b', index: 0 | 1): Side => {
      const chosen = packageOf(data, texts.get(`${letter}.package`) ?? '');
      counts[index] = readCount(letter, chosen.id, counts[index]);
      const taken = data.terms.addOns.flatMap(({ id, per }, place): [string, number][] => {
        const text = texts.get(addOnField(place, `${letter}.`)) ?? '';
        const amount = per === 'hour' ? Number(/^\d{1,2}(\.(25|5|50|75))?$/.exec(text.trim())?.[0] ?? 0) : 1;
        return text === '' || amount === 0 ? [] : [[id, Math.min(72, amount)]];
      });
      return { package: chosen.id, guests: counts[index], addOns: Object.fromEntries(taken) };
    };
    return [side('a', 0), side('b', 1)];
  }

  /** The count of a side, with what is wrong with it said at the field. */
  function readCount(letter: string, menu: string, before: number): number {
    const field = countField(letter);
    const text = field.value.trim();
    const chosen = packageOf(data, menu);
    const { children } = proposedChoice(data, chosen).guests;
    const most = chosen.tiers.at(-1)?.to ?? 100_000;
    const count = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
    const problem = Number.isNaN(count)
      ? say('ask.number')
      : count < children + 1
        ? say('ask.least', { least: children + 1, children })
        : count > most
          ? say('ask.most', { menu: chosen.name, n: most })
          : '';
    changeText(elementIn(form, `[data-error="${letter}.guests"]`, HTMLElement), problem);
    field.setAttribute('aria-invalid', String(problem !== ''));
    return problem === '' ? count : before;
  }

  function show(): void {
    const pair = sides();
    const known = new Map([...prices.labels(pair[0]), ...prices.labels(pair[1])]);
    const priced = [prices.of(pair[0]), prices.of(pair[1])] as const;
    const comparison = comparedSums(say, data, priced, known);
    changeText(elementIn(form, '[data-part="words"]', HTMLElement), comparison.words);
    fillComparedTable(body, comparison.rows);
    for (const [index, letter] of LETTERS.entries()) {
      const side = pair[index] as Side;
      for (const name of form.querySelectorAll(`[data-name="${letter}"]`))
        changeText(name, comparison.names[index] ?? '');
      showSlider(letter, side.guests);
    }
    const key = pair.map(menuKey).join();
    if (key !== menusShown) {
      menusShown = key;
      showMenus(pair, priced);
    }
    const span = spanOf(pair);
    if (`${key} ${span.from}-${span.to}` !== drawn) calculateCurves(pair, `${key} ${span.from}-${span.to}`);
    showPoints(pair);
    announce(comparison.words);
  }

  function showSlider(letter: string, guests: number): void {
    const slider = elementIn(form, `[data-for="${letter}"]`, HTMLInputElement);
    if (guests > Number(slider.max)) slider.max = String(guests);
    if (guests < Number(slider.min)) slider.min = String(guests);
    if (slider.value !== String(guests)) slider.value = String(guests);
    slider.setAttribute('aria-valuetext', say('guests', { n: guests }));
  }

  /** What hangs on the menus and not on their counts. */
  function showMenus(pair: readonly [Side, Side], priced: readonly [PricedSide, PricedSide]): void {
    const { dishes, coverage } = comparedMenus(say, data, priced);
    for (const [index, letter] of LETTERS.entries()) {
      for (const row of form.querySelectorAll<HTMLElement>(`[data-add-on="${letter}"]`))
        row.hidden = !(row.dataset.menus ?? '').split(' ').includes(pair[index]?.package ?? '');
    }
    for (const [part, names] of Object.entries(dishes))
      list(elementIn(form, `[data-dishes="${part}"]`, HTMLElement), names);
    for (const [index, row] of [...form.querySelectorAll('[data-part="coverage"] tr')].entries()) {
      for (const [side, letter] of LETTERS.entries())
        changeText(
          elementIn(row, `[data-cell="${letter}"]`, HTMLElement),
          coverage[index]?.cells[side] ?? '',
        );
    }
  }

  /** The counts the picture spans: the slider's, and the two sides' as long as that is not too wide to calculate. */
  function spanOf(pair: readonly [Side, Side]): { from: number; to: number } {
    const { from, to } = countRange(data);
    const wide = {
      from: Math.min(from, ...pair.map(({ guests }) => guests)),
      to: Math.max(to, ...pair.map(({ guests }) => guests)),
    };
    return wide.to - wide.from <= WIDEST ? wide : { from, to: Math.min(to, from + WIDEST) };
  }

  /** Calculates both menus at every count of the span, bit by bit, and then draws them. */
  function calculateCurves(pair: readonly [Side, Side], key: string): void {
    stop();
    drawn = key;
    picture = undefined;
    svg.removeAttribute('data-drawn');
    const { from, to } = spanOf(pair);
    const counts = Array.from({ length: to - from + 1 }, (_, index) => from + index);
    stop = inSlices(
      counts,
      (guests) => {
        for (const side of pair) prices.of({ ...side, guests });
      },
      () => {
        drawCurves();
        show();
      },
    );
  }

  function drawCurves(): void {
    const pair = sides();
    const { from, to } = spanOf(pair);
    const counts = Array.from({ length: to - from + 1 }, (_, index) => from + index);
    const totals = [prices.totals(pair[0], counts), prices.totals(pair[1], counts)] as const;
    const width = svg.clientWidth || 640;
    const height = svg.clientHeight || 320;
    svg.dataset.width = String(width);
    svg.setAttribute('viewBox', `0 0 ${width} ${height}`);
    picture = pictureOf({ width, height, counts, totals: [totals[0].map(Number), totals[1].map(Number)] });
    const runs = runsOf(data.terms, counts, totals);
    drawPicture(svg, picture, { crossings: crossingsOf(runs), money: roundMoney });
    svg.setAttribute('data-drawn', 'yes');
    const steps = data.tellPriceSteps
      ? [
          ...new Set(
            pair.map((side, index) =>
              priceStepWords(say, data.terms, prices.of(side).name, counts, totals[index] ?? []),
            ),
          ),
        ]
      : [];
    const words = [runWords(say, runs), ...steps].filter((sentence) => sentence !== '').join(' ');
    changeText(elementIn(form, '[data-part="picture-words"]', HTMLElement), words);
    showPoints(pair);
  }

  function showPoints(pair: readonly [Side, Side]): void {
    if (!picture) return;
    const [a, b] = pair.map((side) => ({ count: side.guests, total: Number(prices.of(side).quote.total) }));
    placePoints(svg, picture, [a ?? null, b ?? null]);
  }

  /** A round sum for the picture's edge, without its minor unit. */
  function roundMoney(total: number): string {
    const text = displayMoney(money(String(Math.round(total)), data.terms.currency), data.terms.locale);
    return text.replace(/[.,]0+(?=\D*$)/, '');
  }

  return { form, show };
}

function list(element: HTMLElement, names: readonly string[]): void {
  element.replaceChildren(
    ...(names.length > 0 ? names : ['–']).map((name) => {
      const item = document.createElement('li');
      item.textContent = name;
      return item;
    }),
  );
}
