import { compareDays } from '../engine/calendar/day.ts';
import {
  addOnField,
  PACKAGE_FIELD,
  PEOPLE,
  peopleField,
  SIGNATURE_FIELDS,
} from '../views/client/proposal-choice-fields.ts';
import { packageOf, proposedChoice, type Side } from '../views/client/proposal-choice-sides.ts';
import { type AnswerPanel, answerPanel } from './answer-panel.ts';
import { acceptance, countChange, expiredWords, sendGuestList, withAcceptedMenu } from './answers.ts';
import { changeText } from './changed-text.ts';
import { choiceFragment, linkedChoice } from './choice-link.ts';
import { closedSince } from './closed-since.ts';
import { type ComparePanel, comparePanel } from './compare-panel.ts';
import { elementIn } from './element-in.ts';
import { fillForm, formTexts, type Texts } from './form-texts.ts';
import { guestListPanel } from './guest-list-panel.ts';
import { keptTexts } from './kept-texts.ts';
import { kitchenDay } from './kitchen-day.ts';
import { needsPanel } from './needs-panel.ts';
import { pageData } from './page-data.ts';
import { say } from './words.ts';

const KEEP_AFTER_MILLISECONDS = 300;

/** Brings a proposal's page to life, as far as it has something to compare or to answer. */
export function startProposalPage(): void {
  needsPanel(document);
  const data = pageData(document);
  if (!data) return;
  const today = () => kitchenDay(new Date(), data.kitchen.timeZone, data.issued);
  const forms = [...document.querySelectorAll<HTMLFormElement>('form[data-client]')];
  // What was typed before the counts on record changed must not stand in their place.
  const recorded = data.accepted ? `:${JSON.stringify(data.accepted.choice)}` : '';
  const kept = keptTexts(() => window.localStorage, `salver:${data.digest || data.proposal}${recorded}`);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let answered = false;
  const panels: (ComparePanel | AnswerPanel)[] = [];

  const answer = formOf('answer');
  const change = formOf('change');
  const compare = formOf('compare');
  if (answer) panels.push(answerPanel(answer, data, acceptance(data, today, done)));
  if (change) panels.push(answerPanel(change, data, countChange(data, today, done), withAcceptedMenu(data)));
  if (compare) panels.push(comparePanel(compare, data, takeSide));

  const linked = linkedChoice(location.hash, data.digest);
  const texts = kept.read();
  if (texts) for (const form of forms) fillForm(form, texts, (name) => texts.has(name) || form !== compare);
  if (linked) openLink();
  const list = formOf('guest-list');
  if (list) guestListPanel(list, data, (csv) => sendGuestList(data, csv, today()));
  showAll();
  if (answer && hasExpired()) close(answer, expiredWords(data));

  for (const form of forms) form.addEventListener('input', keepSoon);
  window.addEventListener('pagehide', keepNow);
  document.addEventListener('visibilitychange', keepNow);
  // A page may stay open for days: what it offers is looked at again whenever somebody comes back to it.
  document.addEventListener('visibilitychange', () => void lookAgain());
  window.addEventListener('hashchange', () => {
    if (linkedChoice(location.hash, data.digest)) openLink();
    showAll();
  });
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-share]'))
    button.addEventListener('click', () => void share(button));
  document.documentElement.dataset.ready = 'yes';

  function hasExpired(): boolean {
    return data !== null && compareDays(today(), data.validUntil) > 0;
  }

  async function lookAgain(): Promise<void> {
    if (!data || !answer || document.visibilityState !== 'visible') return;
    if (hasExpired()) return close(answer, expiredWords(data));
    // A page opened as a file has nobody to ask.
    if (location.protocol === 'file:') return;
    const words = await closedSince(data.digest, (...call) => fetch(...call));
    if (words !== undefined) close(answer, words);
  }

  function formOf(kind: string): HTMLFormElement | undefined {
    return forms.find((form) => form.dataset.client === kind);
  }

  function showAll(): void {
    for (const panel of panels) panel.show();
  }

  function allTexts(): Map<string, string> {
    return new Map(forms.flatMap((form) => [...formTexts(form)]));
  }

  function keepSoon(): void {
    clearTimeout(timer);
    timer = setTimeout(keepNow, KEEP_AFTER_MILLISECONDS);
  }

  function keepNow(): void {
    clearTimeout(timer);
    if (!answered) kept.keep(allTexts());
  }

  function done(): void {
    answered = true;
    kept.forget();
  }

  /** Fills the forms from the address, and takes the choice out of it, so that a reload keeps what is typed since. */
  function openLink(): void {
    const link = linkedChoice(location.hash, data?.digest ?? '');
    if (!link) return;
    const isSide = (name: string) => /^[ab]\./.test(name);
    const own: readonly string[] = [...SIGNATURE_FIELDS, 'guest-list'];
    for (const form of forms)
      fillForm(
        form,
        link.texts,
        (name) => !own.includes(name) && (link.texts.has(name) || !isSide(name) || sidesIn(link.texts)),
      );
    const notice = document.querySelector<HTMLElement>('[data-part="link-notice"]');
    if (notice && !link.sameOffer) {
      notice.hidden = false;
      changeText(notice, say('link.other'));
    }
    history.replaceState(null, '', location.pathname + location.search);
  }

  function takeSide(side: Side): void {
    if (!data || !answer) return;
    const { guests } = proposedChoice(data, packageOf(data, side.package));
    const texts = new Map(formTexts(answer));
    texts.set(PACKAGE_FIELD, side.package);
    const people = {
      adults: side.guests - guests.children,
      children: guests.children,
      vendors: guests.vendors,
    };
    for (const group of PEOPLE) texts.set(peopleField(group), String(people[group]));
    for (const [index, { id }] of data.terms.addOns.entries()) {
      const taken = side.addOns[id];
      if (taken) texts.set(addOnField(index), String(taken));
      else texts.delete(addOnField(index));
    }
    fillForm(answer, texts, () => true);
    answer.dispatchEvent(new Event('input', { bubbles: true }));
    elementIn(document, '#accept-now', HTMLElement).focus();
  }

  async function share(button: HTMLButtonElement): Promise<void> {
    const address = `${location.href.split('#')[0]}${choiceFragment(allTexts(), data?.digest ?? '')}`;
    const field = button.parentElement?.querySelector<HTMLInputElement>('[data-part="share-address"]');
    const said = button.parentElement?.querySelector('[data-part="share-said"]');
    if (field) {
      field.value = address;
      field.hidden = false;
    }
    const copied = await navigator.clipboard?.writeText(address).then(
      () => true,
      () => false,
    );
    if (said) changeText(said, say(copied ? 'link.copied' : 'link.made'));
    if (!copied) field?.select();
  }
}

function sidesIn(texts: Texts): boolean {
  return texts.has('a.package') || texts.has('b.package');
}

/** An offer that no longer stands as it did when the page was opened cannot be accepted from it any more. */
function close(form: HTMLFormElement, words: string): void {
  const notice = document.querySelector<HTMLElement>('[data-part="expired"]');
  if (notice) {
    notice.hidden = false;
    changeText(notice, words);
  }
  const state = document.querySelector('.state');
  if (state) changeText(state, words);
  form.hidden = true;
}
