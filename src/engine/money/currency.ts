/*
 * Active currency codes of ISO 4217 (list one) by their minor units: the digits after the decimal point.
 * Codes without a minor unit (precious metals, test codes) and fund codes are left out. Those without two digits
 * are checked in the tests against a published edition; codes newer than that are from memory.
 */
const TWO =
  'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC ' +
  'CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR ' +
  'JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD ' +
  'NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN ' +
  'SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD XCG YER ZAR ZMW ZWG';
const NONE = 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF';
const THREE = 'BHD IQD JOD KWD LYD OMR TND';

const MINOR_UNITS: ReadonlyMap<string, number> = new Map([
  ...TWO.split(' ').map((code) => [code, 2] as const),
  ...NONE.split(' ').map((code) => [code, 0] as const),
  ...THREE.split(' ').map((code) => [code, 3] as const),
]);

/** Whether a text is the code of an active currency, in capitals. */
export function isCurrency(code: string): boolean {
  return MINOR_UNITS.has(code);
}

/** How many digits after the decimal point the currency's smallest sum has (ISO 4217). Throws on other codes. */
export function minorUnits(code: string): number {
  const digits = MINOR_UNITS.get(code);
  if (digits === undefined) throw new RangeError(`"${code}" is not a currency code, such as USD or EUR`);
  return digits;
}
