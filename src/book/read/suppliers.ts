import type { Supplier } from '../../engine/purchase/price-list.ts';
import { type SupplierText, supplierSchema } from '../../schema/supplier.ts';
import type { ContentText } from '../files/content-texts.ts';
import type { Ledger } from '../ledger.ts';
import { readForm } from '../link/grammar/form.ts';
import { linkSupplier } from '../link/prices/supplier.ts';
import { readEntries } from './entries.ts';

/** A supplier, and what suppliers.yaml says about its price list. */
export interface ReadSupplier {
  readonly supplier: Supplier;
  readonly text: SupplierText;
}

/** The suppliers by id. */
export function readSuppliers(
  ledger: Ledger,
  files: readonly ContentText[],
  currency: string,
): Map<string, ReadSupplier> {
  const suppliers = new Map<string, ReadSupplier>();
  for (const file of files) {
    readEntries(ledger, 'supplier', file, (reading, id, raw) => {
      const text = readForm(reading, supplierSchema, raw);
      const supplier = text && linkSupplier(reading, id, text, currency);
      if (supplier && reading.sound) suppliers.set(id, { supplier, text });
    });
  }
  return suppliers;
}
