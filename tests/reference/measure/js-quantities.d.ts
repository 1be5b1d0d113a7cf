/** The part of js-quantities that the tests use; the library has no types of its own. */
declare module 'js-quantities' {
  interface Measured {
    readonly scalar: number;
    to(unit: string): Measured;
  }
  export default function Qty(amount: number, unit: string): Measured;
}
