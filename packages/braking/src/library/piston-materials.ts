import type { ClassValue } from './class-value.ts';

export interface PistonMaterial {
  readonly title: string;
  /** W/(m² K) of piston area, along half of the piston's length. */
  readonly conductance: ClassValue;
  /** J/(m² K) of piston area, heat held. */
  readonly heat: ClassValue;
}

/**
 * What caliper pistons are made of: a cup about 40 mm long whose wall is 35 to 60 % of its area.
 *
 * Source: [common-practice]
 */
export const pistonMaterials = {
  steel: {
    title: 'Steel piston',
    conductance: {
      value: 1200,
      spread: 400,
      known: 'from memory',
      note: '50 W/(m K), wall 45 % of the area, over 20 mm; stainless steel leads a third of that.',
    },
    heat: { value: 65_000, spread: 15_000, known: 'from memory', note: 'About 140 kg a square meter.' },
  },
  aluminum: {
    title: 'Aluminum piston',
    conductance: {
      value: 3600,
      spread: 1200,
      known: 'from memory',
      note: '150 W/(m K), wall 50 % of the area, over 20 mm.',
    },
    heat: { value: 50_000, spread: 12_000, known: 'from memory', note: 'About 55 kg a square meter.' },
  },
  phenolic: {
    title: 'Phenolic piston',
    conductance: {
      value: 18,
      spread: 7,
      known: 'from memory',
      note: '0.5 to 0.6 W/(m K), wall 60 % of the area, over 20 mm.',
    },
    heat: { value: 60_000, spread: 15_000, known: 'from memory', note: 'About 45 kg a square meter.' },
  },
} as const satisfies Readonly<Record<string, PistonMaterial>>;

export type PistonMaterialId = keyof typeof pistonMaterials;
