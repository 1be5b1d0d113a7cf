import { changeText } from './changed-text.ts';

const REST_MILLISECONDS = 900;

/**
 * Says a sentence to those who listen to the page, once things have come to rest: a moving slider would otherwise
 * talk without end.
 */
export function sayLater(region: HTMLElement): (sentence: string) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (sentence) => {
    clearTimeout(timer);
    timer = setTimeout(() => changeText(region, sentence), REST_MILLISECONDS);
  };
}
