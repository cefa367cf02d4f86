// Measured charges of single cells from open datasets, one row each.

import { liFe, lihv, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'

interface Dataset {
  readonly title: string
  readonly citation: string
  readonly url: string
  readonly licence: string
  readonly chemistry: Chemistry
}

export const datasets = {
  highRatePouch: {
    title: 'UW-Madison LiPo 5450 mAh 1S cell',
    citation:
      'Repo README: data for "Estimating Battery State-of-Charge within 1% using Machine Learning and Physics-based Models", SAE Technical Paper 2023-01-0522 (2023)',
    url: 'https://www.sae.org/publications/technical-papers/content/2023-01-0522/ ; repo uw-mad-dash/Battery-SoC-Estimation',
    licence: 'Apache-2.0 (repository LICENSE; no separate data licence)',
    chemistry: lipo,
  },
  highVoltagePouch: {
    title: 'SINTEF Melasta SLPBA842124HV rate test 25 degC (BDF reference examples)',
    citation:
      'SINTEF (S. Clark, J.C. Guldahl, J. Tolchard per sister metadata), Battery Data Format reference files, Zenodo records 17295469 / 18986774',
    url: 'https://zenodo.org/records/17295469 (file SINTEF__SLPBA842124HV__2024-10-23__Rate_25degC__Neware__Time_Bug.csv); repo battery-data-alliance/battery-data-format',
    licence: 'repository Apache-2.0; sister datasets of same cells in the repo metadata say CC-BY-4.0',
    chemistry: lihv,
  },
  phoneCell: {
    title: 'SINTEF Google G20M7 (Pixel 10 cell) C/30 25 degC',
    citation:
      'SINTEF (S. Clark, S.Y. Martinsen, J. Tolchard), "Google Pixel 10 Battery - G20M7 Lithium-Ion Cell Test Data", BDF reference files, Zenodo record 18986774',
    url: 'https://zenodo.org/records/18986774 ; https://github.com/digibatt/battery-data/google/g20m7/202512',
    licence: 'repository Apache-2.0; repo metadata for sister files CC-BY-4.0',
    chemistry: lihv,
  },
  prismatic: {
    title: 'CALCE CS2 (University of Maryland)',
    citation:
      'CALCE Battery Data Archive, Center for Advanced Life Cycle Engineering, Univ. of Maryland (page asks users to cite CALCE and >=3 of its articles; e.g. He et al., J. Power Sources 196 (2011) 10314; Xing et al., Microelectron. Reliab. 53 (2013) 811)',
    url: 'https://web.calce.umd.edu/batteries/data (calce.umd.edu/battery-data)',
    licence: 'no licence stated; use with citation requested',
    chemistry: liIon,
  },
  nmc18650: {
    title: 'LG 18650HG2 Li-ion Battery Data (McMaster, Kollmeyer et al.)',
    citation:
      'Kollmeyer P., Vidal C., Naguib M., Skells M. (2020) "LG 18650HG2 Li-ion Battery Data and Example Deep Neural Network xEV SOC Estimator Script", Mendeley Data V3, doi:10.17632/cp3473x7xv.3',
    url: 'https://data.mendeley.com/datasets/cp3473x7xv/3',
    licence: 'Mendeley Data record licence (CC BY 4.0 from memory; not stated in the copy used)',
    chemistry: liIon,
  },
  nca21700: {
    title: 'Toyota Research Institute / Stanford cycling files in beep test data',
    citation:
      'BEEP: Herring et al., SoftwareX 11 (2020) 100506, doi:10.1016/j.softx.2020.100506 (test files); PreDiag series believed to belong to data.matr.io "project 8" (van Vlijmen et al.) - inferred from file names',
    url: 'repo TRI-AMDD/beep beep/tests/test_files',
    licence: 'Apache-2.0 (repository)',
    chemistry: liIon,
  },
  lfp26650: {
    title: 'UCCS ESC toolbox A123 dynamic tests (script 3 charge)',
    citation:
      'G. Plett, ESCtoolbox, University of Colorado Colorado Springs (mocha-java.uccs.edu/BMS1/), Battery Management Systems Vol. I; CSV export in batterysim/esctoolbox-python',
    url: 'http://mocha-java.uccs.edu/BMS1/ ; repo batterysim/esctoolbox-python dyn_data/',
    licence: 'MIT (batterysim repository, covers the export; original toolbox terms not in copy)',
    chemistry: liFe,
  },
} as const satisfies Record<string, Dataset>

export type DatasetName = keyof typeof datasets

export interface ChargeRun {
  readonly id: string
  readonly dataset: DatasetName
  readonly nameplate_Ah: number
  /** From the empty end of the run's cycles up to this run's cutoff. */
  readonly measured_Ah: number
  readonly cutoff_V: number
  readonly current_A: number
  /** Share of `measured_Ah` in the cell at the start. */
  readonly start: number
  /** A reading of the cell's resistance and how it was taken, where there is one of use. */
  readonly reading_ohm?: number
  readonly readingTaken?: string
  readonly timeToCutoff_s: number
  /** A tenth of the nameplate in A; where the run never passed it, the current at its end. */
  readonly termination_A: number
  readonly timeToTermination_s: number
}

export const chargeRuns: readonly ChargeRun[] = [
  {
    id: 'lipo5450_c1_cyc02',
    dataset: 'highRatePouch',
    nameplate_Ah: 5.45,
    measured_Ah: 4.9798,
    cutoff_V: 4.1,
    current_A: 5.4501,
    start: 0.0,
    reading_ohm: 0.00538,
    readingTaken: '1 s step at the top of this charge',
    timeToCutoff_s: 3065.8,
    termination_A: 0.545,
    timeToTermination_s: 3838.6,
  },
  {
    id: 'lipo5450_c3_cyc02',
    dataset: 'highRatePouch',
    nameplate_Ah: 5.45,
    measured_Ah: 4.9988,
    cutoff_V: 4.1,
    current_A: 16.3504,
    start: 0.0,
    reading_ohm: 0.00365,
    readingTaken: '1 s step at the top of this charge',
    timeToCutoff_s: 946.1,
    termination_A: 0.545,
    timeToTermination_s: 1678.5,
  },
  {
    id: 'melasta_hv_step02',
    dataset: 'highVoltagePouch',
    nameplate_Ah: 6.55,
    measured_Ah: 7.2797,
    cutoff_V: 4.35,
    current_A: 2.1813,
    start: 0.4447,
    reading_ohm: 0.0064,
    readingTaken: '10 s step at full charge',
    timeToCutoff_s: 6543.6,
    termination_A: 0.655,
    timeToTermination_s: 6755.5,
  },
  {
    id: 'melasta_hv_step06',
    dataset: 'highVoltagePouch',
    nameplate_Ah: 6.55,
    measured_Ah: 7.2797,
    cutoff_V: 4.35,
    current_A: 2.1814,
    start: 0.0,
    reading_ohm: 0.0064,
    readingTaken: '10 s step at full charge',
    timeToCutoff_s: 11917.1,
    termination_A: 0.655,
    timeToTermination_s: 12116.5,
  },
  {
    id: 'g20m7_c30',
    dataset: 'phoneCell',
    nameplate_Ah: 4.835,
    measured_Ah: 3.8552,
    cutoff_V: 4.2,
    current_A: 0.165,
    start: 0.0043,
    timeToCutoff_s: 82530.2,
    termination_A: 0.0502,
    timeToTermination_s: 84384.5,
  },
  {
    id: 'calce_cs2_35_8_18_10_c1',
    dataset: 'prismatic',
    nameplate_Ah: 1.1,
    measured_Ah: 1.1377,
    cutoff_V: 4.2,
    current_A: 0.5501,
    start: 0.0,
    reading_ohm: 0.094,
    readingTaken: 'cycler pulse at full charge',
    timeToCutoff_s: 6603.6,
    termination_A: 0.11,
    timeToTermination_s: 8085.8,
  },
  {
    id: 'calce_cs2_36_8_30_10_c3',
    dataset: 'prismatic',
    nameplate_Ah: 1.1,
    measured_Ah: 1.1388,
    cutoff_V: 4.2,
    current_A: 0.5502,
    start: 0.0,
    reading_ohm: 0.0875,
    readingTaken: 'cycler pulse at full charge',
    timeToCutoff_s: 6685.4,
    termination_A: 0.11,
    timeToTermination_s: 8036.2,
  },
  {
    id: 'lghg2_549_1',
    dataset: 'nmc18650',
    nameplate_Ah: 3.0,
    measured_Ah: 2.818,
    cutoff_V: 4.2,
    current_A: 2.9985,
    start: 0.0199,
    reading_ohm: 0.0333,
    readingTaken: '10 s step at full charge',
    timeToCutoff_s: 2659.0,
    termination_A: 0.3,
    timeToTermination_s: 4155.2,
  },
  {
    id: 'lghg2_551_2',
    dataset: 'nmc18650',
    nameplate_Ah: 3.0,
    measured_Ah: 2.818,
    cutoff_V: 4.2,
    current_A: 2.9985,
    start: 0.0307,
    reading_ohm: 0.0333,
    readingTaken: '10 s step at full charge',
    timeToCutoff_s: 2620.4,
    termination_A: 0.3,
    timeToTermination_s: 4112.3,
  },
  {
    id: 'lghg2_552_12',
    dataset: 'nmc18650',
    nameplate_Ah: 3.0,
    measured_Ah: 2.818,
    cutoff_V: 4.2,
    current_A: 2.9985,
    start: 0.0841,
    reading_ohm: 0.0333,
    readingTaken: '10 s step at full charge',
    timeToCutoff_s: 2438.2,
    termination_A: 0.3,
    timeToTermination_s: 3940.9,
  },
  {
    id: 'tri_prediag229_c1',
    dataset: 'nca21700',
    nameplate_Ah: 4.84,
    measured_Ah: 4.7626,
    cutoff_V: 4.2,
    current_A: 0.6917,
    start: 0.0,
    reading_ohm: 0.03861,
    readingTaken: '1 s step as received',
    timeToCutoff_s: 23827.8,
    termination_A: 0.484,
    timeToTermination_s: 24308.6,
  },
  {
    id: 'a123_10_N25',
    dataset: 'lfp26650',
    nameplate_Ah: 2.3,
    measured_Ah: 2.06,
    cutoff_V: 3.6,
    current_A: 0.7673,
    start: 0.0,
    reading_ohm: 0.0095,
    readingTaken: '1 s steps at about 90 %',
    timeToCutoff_s: 9492.2,
    termination_A: 0.23,
    timeToTermination_s: 9570.9,
  },
  {
    id: 'a123_30_N05',
    dataset: 'lfp26650',
    nameplate_Ah: 2.3,
    measured_Ah: 2.06,
    cutoff_V: 3.6,
    current_A: 0.7677,
    start: 0.0,
    reading_ohm: 0.0095,
    readingTaken: '1 s steps at about 90 %',
    timeToCutoff_s: 9480.4,
    termination_A: 0.23,
    timeToTermination_s: 9564.1,
  },
]
