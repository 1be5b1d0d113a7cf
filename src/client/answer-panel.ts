import type { Choice } from '../engine/quote/choice.ts';
import { atTable } from '../engine/quote/counts.ts';
import { type DroppedNeed, needsDropped } from '../offers/answers/client-may.ts';
import { droppedWords } from '../offers/problem-words.ts';
import { billedChoice } from '../views/client/billed-choice.ts';
import { OTHER_NEEDS, PACKAGE_FIELD } from '../views/client/proposal-choice-fields.ts';
import type { ClientTerms } from '../views/client/terms.ts';
import { quoteView } from '../views/quote-view-of.ts';
import { changeText } from './changed-text.ts';
import type { FieldProblem } from './choice-in.ts';
import { choiceIn, choiceProblems } from './choice-in.ts';
import { showCourseSums } from './course-sums.ts';
import { elementIn } from './element-in.ts';
import { clearProblems, showProblems } from './field-problems.ts';
import { formTexts, type Texts } from './form-texts.ts';
import type { AnswerFile, HandedOver } from './hand-over.ts';
import { fillQuote } from './quote-table.ts';
import { sayLater } from './say-later.ts';
import { signatureProblems } from './signature.ts';
import { makeSteppers } from './steppers.ts';
import { say } from './words.ts';

/** What a form ends in. */
export interface Answer {
  /** Why no answer can be given now, whatever the form says; null where one can. */
  closed(): string | null;
  file(choice: Choice, texts: Texts): AnswerFile;
  send(file: AnswerFile): Promise<HandedOver>;
  /** Called once the answer has left the page. */
  sent(): void;
}

/** A form that ends in a file for the kitchen. */
export interface AnswerPanel {
  readonly form: HTMLFormElement;
  /** Shows what the form's fields say now. */
  show(): void;
}

/** Texts may hold the package of a form that has no field for it. */
type PackageOf = (texts: Texts) => Texts;

/** Brings a form that answers to life: its menus and sums follow its fields, and its button makes the answer. */
export function answerPanel(
  form: HTMLFormElement,
  data: ClientTerms,
  answer: Answer,
  complete: PackageOf = (texts) => texts,
): AnswerPanel {
  const announce = sayLater(elementIn(form, '[data-part="said"]', HTMLElement));
  const others = [...form.querySelectorAll<HTMLElement>('[data-other-need]')];
  const more = form.querySelector<HTMLButtonElement>('[data-part="more-needs"]');
  let busy = false;

  makeSteppers(form);
  form.addEventListener('input', show);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (!busy) void send();
  });
  more?.addEventListener('click', () => {
    const next = others.find((row) => row.hidden);
    if (!next) return;
    next.hidden = false;
    elementIn(next, 'input', HTMLInputElement).focus();
    more.hidden = others.every((row) => !row.hidden);
  });

  function show(): void {
    const texts = complete(formTexts(form));
    const { choice, unread } = choiceIn(data, texts);
    for (const menu of form.querySelectorAll<HTMLFieldSetElement>('[data-menu]')) {
      menu.hidden = menu.dataset.menu !== choice.package;
      menu.disabled = menu.hidden;
    }
    for (const row of form.querySelectorAll<HTMLElement>('[data-menus]'))
      row.hidden = !(row.dataset.menus ?? '').split(' ').includes(choice.package);
    for (const row of others.slice(0, OTHER_NEEDS)) {
      const filled = [...row.querySelectorAll('input')].some(({ value }) => value !== '');
      if (filled) row.hidden = false;
    }
    showCourseSums(form, data, choice);
    askOfDropped(droppedBy(choice));
    const known = unread.length === 0 && atTable(choice.guests) > 0;
    elementIn(form, '[data-part="quote"]', HTMLElement).classList.toggle('stale', !known);
    const billed = billedChoice(say, data, choice);
    changeText(
      elementIn(form, '[data-part="quote-stale"]', HTMLElement),
      known ? billed.why : say('sum.stale'),
    );
    if (known) {
      const quote = quoteView(say, data.terms, billed.choice, null);
      fillQuote(form, quote);
      announce(say('sum.total', { sum: quote.total }));
    }
  }

  /** The needs on record, or proposed, that the form would leave nobody with. */
  function droppedBy(choice: Choice): DroppedNeed[] {
    return needsDropped((data.accepted?.choice ?? data.choices[0])?.needs ?? {}, choice.needs);
  }

  /** Names them beside a box to check; whenever they change, it is to be checked again. */
  function askOfDropped(dropped: readonly DroppedNeed[]): void {
    const asked = elementIn(form, '[data-part="needs-off"]', HTMLElement);
    const box = elementIn(asked, 'input', HTMLInputElement);
    const words = droppedWords(say, dropped);
    if (asked.dataset.needs !== words) box.checked = false;
    asked.dataset.needs = words;
    asked.hidden = dropped.length === 0;
    changeText(elementIn(asked, 'label', HTMLLabelElement), say('dropped.box', { needs: words }));
  }

  function droppedProblems(texts: Texts): FieldProblem[] {
    const dropped = droppedBy(choiceIn(data, texts).choice);
    if (dropped.length === 0 || texts.get('needs-off') === 'on') return [];
    return [{ field: 'needs-off', what: say('dropped.problem', { needs: droppedWords(say, dropped) }) }];
  }

  function problemsOf(texts: Texts): FieldProblem[] {
    const asks = [...form.elements].map((element) => element.getAttribute('name') ?? '');
    return [...choiceProblems(data, texts), ...droppedProblems(texts), ...signatureProblems(texts, asks)];
  }

  async function send(): Promise<void> {
    const closed = answer.closed();
    const texts = complete(formTexts(form));
    const problems = closed ? [{ field: PACKAGE_FIELD, what: closed }] : problemsOf(texts);
    showProblems(form, problems);
    if (problems.length > 0) return;
    clearProblems(form);
    const button = elementIn(form, '[type="submit"]', HTMLButtonElement);
    busy = true;
    button.setAttribute('aria-disabled', 'true');
    try {
      const file = answer.file(choiceIn(data, texts).choice, texts);
      const way = await answer.send(file);
      answer.sent();
      showSent(form, file, way, data);
    } finally {
      busy = false;
      button.removeAttribute('aria-disabled');
    }
  }

  return { form, show };
}

/** Puts the outcome in the form's place, with the file to keep. */
function showSent(form: HTMLFormElement, file: AnswerFile, way: HandedOver, data: ClientTerms): void {
  const done = form.parentElement && elementIn(form.parentElement, '[data-part="sent"]', HTMLElement);
  if (!done) return;
  const heading = elementIn(done, 'h3', HTMLHeadingElement);
  changeText(heading, way.by === 'post' ? (heading.dataset.sent ?? '') : (heading.dataset.ready ?? ''));
  changeText(elementIn(done, '[data-part="sent-words"]', HTMLElement), sentWords(file, way, data));
  const link = elementIn(done, 'a[download]', HTMLAnchorElement);
  link.href = URL.createObjectURL(new Blob([file.text], { type: file.type }));
  link.download = file.name;
  form.hidden = true;
  done.hidden = false;
  heading.focus();
}

function sentWords(file: AnswerFile, way: HandedOver, { answers, kitchen }: ClientTerms): string {
  const to = answers.by === 'mail' ? answers.to : kitchen.email || kitchen.name;
  switch (way.by) {
    case 'post':
      return say('sent.post', { kitchen: kitchen.name });
    case 'mail':
      return say('sent.mail', { to, file: file.name });
    case 'download':
      return say('sent.download', { to, file: file.name });
    case 'failed post':
      return say('sent.failed', { to, file: file.name, why: way.why.replace(/[.\s]+$/, '') });
  }
}
