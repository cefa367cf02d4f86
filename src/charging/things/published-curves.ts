// Open-circuit voltage curves and charge fractions as published, each with its source.

import type { ChargeTable, Cited, VoltageCurve } from './chemistry.ts'
import { computed } from './cited.ts'

const everyFivePercent: readonly number[] = Array.from({ length: 21 }, (_, i) => i / 20)

function published(source: string, perCell_V: readonly number[]): Cited<VoltageCurve> {
  return { value: { soc: everyFivePercent, perCell_V }, standing: 'published', source }
}

const multiCellSource =
  'Sunil, Pattipati, Balasingam, IEEE Trans. Instrum. Meas. 2025 (piecewise linear approximation of open-circuit voltage)'

/** LiCoO2/graphite pouch. */
export const lcoPouch = published(
  'Ai, Kraft, Sturm, Jossen, Wu, J. Electrochem. Soc. 167 (2020) 013512, doi:10.1149/2.0122001JES',
  [
    3.0, 3.5421, 3.6396, 3.6654, 3.6954, 3.7168, 3.7331, 3.7481, 3.7622, 3.7763, 3.7925, 3.8122, 3.8365, 3.8675, 3.9089,
    3.9519, 3.9945, 4.0409, 4.0879, 4.1384, 4.2,
  ],
)

/** Five Li-ion cells: two Ni-rich measured, then NMC811, NMC532 and NCA computed from half cells. */
export const liIonCells: readonly Cited<VoltageCurve>[] = [
  published(
    `NMC811 21700, ${multiCellSource}`,
    [
      2.5199, 3.1618, 3.3041, 3.4013, 3.4754, 3.5205, 3.5763, 3.6141, 3.6443, 3.6761, 3.7167, 3.7652, 3.8174, 3.8748,
      3.9201, 3.965, 4.0184, 4.0672, 4.0919, 4.1158, 4.1943,
    ],
  ),
  published(
    `power 18650, ${multiCellSource}`,
    [
      2.7027, 3.1944, 3.35, 3.4344, 3.484, 3.5385, 3.5849, 3.6213, 3.6538, 3.6912, 3.7355, 3.7834, 3.8374, 3.883,
      3.9197, 3.9634, 4.0186, 4.0633, 4.0827, 4.1069, 4.1881,
    ],
  ),
  published(
    'NMC811 21700, Chen et al., J. Electrochem. Soc. 167 (2020) 080534, doi:10.1149/1945-7111/ab9050',
    [
      2.5, 3.1094, 3.2959, 3.4339, 3.4852, 3.5286, 3.5814, 3.629, 3.667, 3.7054, 3.7509, 3.7983, 3.8406, 3.8896, 3.9479,
      3.9943, 4.0421, 4.0809, 4.0967, 4.1236, 4.2,
    ],
  ),
  published(
    'NMC532 pouch, Mohtat et al., J. Electrochem. Soc. 167 (2020) 110561, doi:10.1149/1945-7111/aba5d1',
    [
      2.8, 3.462, 3.5107, 3.5395, 3.5847, 3.6202, 3.6389, 3.6538, 3.671, 3.6914, 3.7155, 3.7446, 3.7968, 3.8399, 3.8797,
      3.9232, 3.9705, 4.0216, 4.0767, 4.136, 4.2,
    ],
  ),
  published(
    'NCA pouch, Kim et al., J. Electrochem. Soc. 158 (2011) A955, doi:10.1149/1.3597614',
    [
      2.7, 3.1939, 3.2471, 3.3099, 3.3721, 3.4331, 3.4918, 3.5472, 3.5978, 3.643, 3.6846, 3.7253, 3.7678, 3.8163,
      3.8742, 3.93, 3.9803, 4.0295, 4.0803, 4.1354, 4.2,
    ],
  ),
]

/** LiFePO4 cells: one measured, one computed from half cells. */
export const liFeCells: readonly Cited<VoltageCurve>[] = [
  published(
    `LiFePO4 18650, ${multiCellSource}`,
    [
      2.0102, 3.0721, 3.2029, 3.2156, 3.2413, 3.2618, 3.2778, 3.2883, 3.2948, 3.2974, 3.2991, 3.301, 3.3032, 3.307,
      3.3163, 3.3329, 3.3371, 3.3393, 3.3411, 3.3429, 3.5981,
    ],
  ),
  published(
    'LiFePO4 18650, About:Energy parameterisation (2022), BPX standard examples, Faraday Institution',
    [
      2.0, 3.1365, 3.1882, 3.2039, 3.2296, 3.2541, 3.2674, 3.2727, 3.275, 3.2764, 3.2781, 3.2809, 3.2864, 3.2953,
      3.3057, 3.3136, 3.3181, 3.3205, 3.3218, 3.3227, 3.65,
    ],
  ),
]

/** High-voltage pouch, worked back from one measured C/3 charge, to 4.335 V. */
export const highVoltagePouch = published(
  'worked back from a C/3 charge of the SINTEF SLPBA842124HV rate test, Zenodo 17295469 and 18986774',
  [
    3.0, 3.655, 3.703, 3.736, 3.764, 3.782, 3.788, 3.793, 3.804, 3.82, 3.845, 3.88, 3.911, 3.941, 3.969, 4.007, 4.08,
    4.122, 4.179, 4.252, 4.335,
  ],
)

/** Mean of four high-voltage phone cells, to 4.326 V. */
export const highVoltagePhoneCells = published(
  'mean of four vendor battery tables in public kernel sources',
  [
    3.0, 3.638, 3.682, 3.706, 3.74, 3.759, 3.772, 3.781, 3.793, 3.81, 3.832, 3.868, 3.917, 3.954, 3.991, 4.04, 4.089,
    4.141, 4.197, 4.256, 4.326,
  ],
)

/** Least and most charge, in percent of the 4.20 V capacity, of twelve published 4.20 V cells. */
export const chargeOf4V20Cells = computed<ChargeTable>(
  {
    perCell_V: [3.5, 3.6, 3.7, 3.75, 3.8, 3.85, 3.9, 3.92, 3.95, 4.0, 4.05, 4.1, 4.15, 4.2],
    least: [2.8, 4.2, 15.3, 23.3, 43.4, 55.2, 63.7, 67.0, 70.2, 75.6, 80.9, 91.2, 96.1, 100],
    most: [30.7, 40.2, 54.8, 61.9, 67.6, 72.6, 77.2, 78.9, 81.4, 85.4, 89.2, 94.5, 99.1, 100],
  },
  'open-circuit tables of the cells in this file and of Ramadass 2004, an NMC111 pouch (BPX examples) and production gauge tables',
)

/** Pouches of 4.20 V: cobalt, a power cell and two that are sold as cans too. */
export const pouchCells: readonly Cited<VoltageCurve>[] = [
  lcoPouch,
  published(
    'Li(Ni,Co)O2 power pouch, Ecker et al., J. Electrochem. Soc. 162 (2015) A1836, doi:10.1149/2.0551509jes',
    [
      2.5, 3.2938, 3.4586, 3.5277, 3.587, 3.6565, 3.7094, 3.743, 3.77, 3.7805, 3.7873, 3.7979, 3.8155, 3.8417, 3.8823,
      3.94, 3.9868, 4.0304, 4.0789, 4.1353, 4.2,
    ],
  ),
  ...liIonCells.slice(3),
]
