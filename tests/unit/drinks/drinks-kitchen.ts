/**
 * A kitchen with one lunch for 80 adults and 12 children and drinks for four hours on a day of 30 °C, small enough to plan
 * by hand: no overage, no tax. Everything is poured, opened or iced in another way.
 */
export const DRINKS_CONTENT: Readonly<Record<string, string>> = {
  'kitchen.yaml': `name: Lantern Kitchen
locale: en-US
currency: USD
measures: us
time zone: America/Chicago
buying: 3 days before
allergens: us
overage: { buffet: 0 % }
places:
  hill-town: { name: Hill Town }
guarantee: { deadline: 7 days before, floor: 90 % }
payments: [30 % when accepted, balance 7 days before]
stations: { stove: Stove }
drinks: { ice: bagged-ice }
rentals:
  tumbler: { name: Tumblers, amount: 1 each per drink, spare: 10 %, cost: 0.20 }
  cocktail-napkin: { name: Cocktail napkins, amount: 1 each per 2 drinks, spare: 10 % }
  plate: { name: Plates, amount: 1 each per guest }
add-ons:
  tea-table:
    name: Tea table
    price: 3.00 per guest
    class: drink
    drinks:
      hours: 2 hours
      per guest: 1 per hour
      kinds:
        hot-tea: { share: 100 %, glass: 8 fl oz, with: { milk-jug: ½ fl oz } }
`,
  'suppliers.yaml': 'hill-farm: { name: Hill Farm }\n',
  'prices/hill-farm.csv': `ingredient,pack,price,item number,valid from
lentils,25 lb sack,31.00,L1,2026-01-01
pear-juice,1 gal,9.00,P1,2026-01-01
pear-soda,24 bottles,24.00,S24,2026-01-01
still-cider,12 bottles,96.00,C12,2026-01-01
bagged-ice,20 lb bag,4.00,I20,2026-01-01
tea-leaves,1 lb,14.00,T1,2026-01-01
milk,1 gal,5.00,M1,2026-01-01
`,
  'ingredients/own.yaml': `lentils: { from: plant, contains: none }
pear-juice: { from: plant, contains: none }
pear-soda: { from: plant, contains: none }
still-cider: { from: "plant, alcohol", contains: sulphites }
bagged-ice: { name: Bagged ice, from: water, contains: none, storage: frozen }
tea-leaves: { from: plant, contains: none }
milk: { from: milk, contains: milk }
`,
  'recipes/lentil-soup.mdx': `---
name: Lentil soup
makes: 40 servings
ingredients: { lentils: 4 lb }
steps:
  - { do: Simmer., when: on the day, station: stove, hands-on: 20 min, cook to: 165 °F }
keeps: 3 days
hold: hot
---
`,
  'recipes/pear-cup.mdx': `---
name: Pear cup
makes: 1 gal
ingredients: { pear-juice: 2 qt, water: 2 qt }
steps:
  - { do: Mix., when: on the day, station: stove, hands-on: 5 min }
keeps: 2 days
hold: cold
---
`,
  'recipes/pear-soda-bottle.mdx': `---
name: Pear soda
makes: [1 bottle, 12 fl oz]
ingredients: { pear-soda: 1 bottle }
steps:
  - { do: Stand in ice., when: on the day, station: stove, hands-on: 5 min }
keeps: 90 days
hold: cold
temperature control: no
---
`,
  'recipes/cider-bottle.mdx': `---
name: Still cider
makes: [1 bottle, 25 fl oz]
ingredients: { still-cider: 1 bottle }
steps:
  - { do: Stand in ice., when: on the day, station: stove, hands-on: 5 min }
keeps: 90 days
hold: cold
temperature control: no
---
`,
  'recipes/hot-tea.mdx': `---
name: Hot tea
makes: 1 gal
ingredients: { tea-leaves: 2 oz, water: 1 gal }
steps:
  - { do: Brew., when: at serving, station: stove, hands-on: 5 min, unattended: 10 min }
keeps: 1 day
hold: hot
temperature control: no
---
`,
  'recipes/milk-jug.mdx': `---
name: Milk for the tea
makes: 1 qt
ingredients: { milk: 1 qt }
steps:
  - { do: Fill the jugs., when: at serving, station: stove, hands-on: 5 min }
keeps: 1 day
hold: cold
---
`,
  'packages/lunch.mdx': `---
name: Lunch
style: buffet
price: { 20+: 40.00 }
child: 50 %
minimum guests: 20
hours: 4 hours
courses:
  - name: To eat
    dishes:
      lentil-soup: 1 serving per guest
drinks:
  name: To drink
  per guest: 2 in the first hour, then 1 per hour
  per child: 1 in the first hour, then ½ per hour
  kinds:
    pear-cup: { share: 40 %, glass: 8 fl oz, ice: glass, in: tumbler }
    pear-soda-bottle: { share: 30 %, ice: tub }
    cider-bottle: { share: 10 %, glass: 5 fl oz, ice: tub }
  water: { share: 20 %, ice: glass, in: tumbler }
---
`,
  'proposals/pell-supper.md': `---
link: mk4vxr2hq7tz3cwnb6ylpaj5ge
client: Tamsin Pell
occasion: Supper
date: 2027-05-15
serve at: 13:00
place: hill-town
weather: 30 °C
valid until: 2027-05-01
guests: { adults: 80, children: 12 }
packages: lunch
add-ons: tea-table
---
Dear Tamsin,
`,
};
