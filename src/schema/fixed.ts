/** The same data with nothing in it that can be changed, all the way down. */
export type Fixed<T> = T extends readonly (infer Item)[]
  ? readonly Fixed<Item>[]
  : T extends string | number
    ? T
    : T extends object
      ? { readonly [Key in keyof T]: Fixed<T[Key]> }
      : T;
