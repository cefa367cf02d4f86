// Open datasets of charges measured on single cells, and which of them no number of the model is fitted on.

import { liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../../src/charging/things/chemistry.ts'

export interface Dataset {
  readonly title: string
  readonly citation: string
  readonly url: string
  readonly licence: string
  readonly chemistry: Chemistry
  /** No number of the model may come from it: it says what the model is worth on cells it has not seen. */
  readonly heldOut?: true
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
  agingStudy: {
    title: 'NASA PCoE Li-ion Battery Aging ARC-FY08Q4 (B0005)',
    citation: 'B. Saha and K. Goebel, Battery Data Set, NASA Ames Prognostics Data Repository (2007)',
    url: 'https://data.nasa.gov (Li-ion Battery Aging Datasets)',
    licence: 'US government work',
    chemistry: liIon,
  },
  cycled21700: {
    title: 'HKUST cycling data, batch H24 (21700, 4.2 Ah class)',
    citation: 'S. Pepe, HKUST-dataset (cycling data of 5 batches of lithium-ion cells), GitHub',
    url: 'GitHub, HKUST-dataset',
    licence: 'none stated',
    chemistry: liIon,
  },
  cycled18650: {
    title: 'HKUST cycling data, batch H67 (18650, 2.8 Ah class)',
    citation: 'S. Pepe, HKUST-dataset (cycling data of 5 batches of lithium-ion cells), GitHub',
    url: 'GitHub, HKUST-dataset',
    licence: 'none stated',
    chemistry: liIon,
    heldOut: true,
  },
  aircraftLot: {
    title: 'NASA X-57 Maxwell cell lot, reference capacity tests',
    citation:
      'X-57 cell reference capacity tests (files X57_L1_0xx), GitHub user jcchin, MPT_battery_data, data of 2018',
    url: 'GitHub, jcchin/MPT_battery_data',
    licence: 'none stated',
    chemistry: liIon,
    heldOut: true,
  },
  conditioned18650: {
    title: 'Battery Testing Consortium, LG HG2 cell conditioning',
    citation:
      'High Voltage and Energy Storage Lab, Oxford Brookes University: Battery Testing Consortium (BTC) data, GitHub',
    url: 'GitHub, Battery Testing Consortium',
    licence: 'none stated (public example cell)',
    chemistry: liIon,
    heldOut: true,
  },
  carPouch: {
    title: '2013 Nissan Leaf cell data',
    citation: 'batterysim, nissan-leaf-data, Zenodo 10.5281/zenodo.2580327',
    url: 'https://doi.org/10.5281/zenodo.2580327',
    licence: 'see the Zenodo record',
    chemistry: lipo,
    heldOut: true,
  },
} as const satisfies Record<string, Dataset>

export type DatasetName = keyof typeof datasets
