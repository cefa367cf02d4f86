// Charges measured on single cells from a constant current to a falling one, a line each: where datasets.ts says.

import { type DatasetName, datasets } from './datasets.ts'

/**
 * `measured` is the capacity from the empty end of the run's cycles up to its cutoff, `start` the share of it in the
 * cell before. `read` is a reading of the resistance, taken in about that time. `end` is a tenth of the label, or where
 * the run has no time for that, where it ended; `putBack` up to there. Volts at rest and temperature where they are told.
 */
const table = `
id                       family            label_Ah  measured_Ah  cutoff_V  current_A  start   rest_V  reading_mOhm  taken  cutoff_s  end_A   end_s    putBack_Ah  ambient_C  age
lipo5450_c1_cyc02        highRatePouch     5.45      4.9798       4.1       5.4501     0       -       5.38          1s     3065.8    0.545   3838.6   4.9658      -          -
lipo5450_c3_cyc02        highRatePouch     5.45      4.9988       4.1       16.3504    0       -       3.65          1s     946.1     0.545   1678.5   4.9989      -          -
melasta_hv_step02        highVoltagePouch  6.55      7.2797       4.35      2.1813     0.4447  3.8133  6.4           10s    6543.6    0.655   6755.5   4.0418      25         -
melasta_hv_step06        highVoltagePouch  6.55      7.2797       4.35      2.1814     0       3.2226  6.4           10s    11917.1   0.655   12116.5  7.2947      25         -
g20m7_c30                phoneCell         4.835     3.8552       4.2       0.165      0.0043  3.3067  -             -      82530.2   0.0502  84384.5  3.8387      25         -
calce_cs2_35_8_18_10_c1  prismatic         1.1       1.1377       4.2       0.5501     0       3.5252  94            10s    6603.6    0.11    8085.8   1.1203      -          -
calce_cs2_36_8_30_10_c3  prismatic         1.1       1.1388       4.2       0.5502     0       3.3239  87.5          10s    6685.4    0.11    8036.2   1.1250      -          -
lghg2_549_1              nmc18650          3         2.818        4.2       2.9985     0.0199  3.126   33.3          10s    2659      0.3     4155.2   2.7192       25         -
lghg2_551_2              nmc18650          3         2.818        4.2       2.9985     0.0307  3.122   33.3          10s    2620.4    0.3     4112.3   2.6906      25         -
lghg2_552_12             nmc18650          3         2.818        4.2       2.9985     0.0841  3.2506  33.3          10s    2438.2    0.3     3940.9   2.5401      25         -
tri_prediag229_c1        nca21700          4.84      4.7626       4.2       0.6917     0       -       38.61         1s     23827.8   0.484   24308.6  4.6573      -          -
a123_10_N25              lfp26650          2.3       2.06         3.6       0.7673     0       1.9967  9.5           1s     9492.2    0.23    9570.9   2.0314      25         -
a123_30_N05              lfp26650          2.3       2.06         3.6       0.7677     0       1.9968  9.5           1s     9480.4    0.23    9564.1   2.0309      25         -
x57_028_001              aircraftLot       3         3.0003       4.2       1.4751     0.153   3.4186  59.26         1s     5217.3    0.3     6788.4   2.5139      20.8       -
x57_028_002              aircraftLot       3         3.0003       4.2       1.4751     0       2.7364  59.26         1s     6482.8    0.3     7893     2.9918      20.8       -
x57_028_003              aircraftLot       3         2.9988       4.2       1.4751     0       2.7272  59.26         1s     6546.5    0.3     7854.8   2.9917      20.9       -
x57_031_001              aircraftLot       3         3.0039       4.2       1.4753     0.151   3.4131  40.2          1s     5438.5    0.3     6700.2   2.5237      19.2       -
x57_031_002              aircraftLot       3         3.0039       4.2       1.4753     0       2.7291  40.2          1s     6653.3    0.3     7830.1   3.0008      19.3       -
x57_031_003              aircraftLot       3         3.0014       4.2       1.4753     0       2.7209  40.2          1s     6670.7    0.3     7809.7   2.9985      19.4       -
x57_034_001              aircraftLot       3         3.0049       4.2       1.4755     0.148   3.4091  45.93         1s     5429.7    0.3     6735.5   2.5331      19.3       -
x57_034_002              aircraftLot       3         3.0049       4.2       1.4755     0       2.7308  45.93         1s     6656.4    0.3     7834.3   3.0025      19.5       -
x57_034_003              aircraftLot       3         3.0048       4.2       1.4751     0       2.7784  45.93         1s     6673.2    0.3     7819     3.0019      19.4       -
x57_037_001              aircraftLot       3         3.0089       4.2       1.4752     0.155   3.4718  -             -      5373.7    0.3     6704     2.5149      19.6       -
x57_037_002              aircraftLot       3         3.0089       4.2       1.4752     0       2.7334  -             -      6616.5    0.3     7855.9   3.0017      19.6       -
x57_037_003              aircraftLot       3         3.0084       4.2       1.4748     0       2.7224  -             -      6642.2    0.3     7836.1   3.0013      20         -
x57_040_001              aircraftLot       3         3.0142       4.2       1.4754     0.151   3.4112  61.76         1s     5174.9    0.3     6902.6   2.5310      20.6       -
x57_040_002              aircraftLot       3         3.0142       4.2       1.4758     0       2.8146  61.76         1s     6439      0.3     7959.8   3.0044      20.5       -
x57_040_003              aircraftLot       3         3.0148       4.2       1.4754     0       2.8063  61.76         1s     6455      0.3     7944.8   3.0038      20.9       -
x57_043_001              aircraftLot       3         3.0077       4.2       1.4751     0.154   3.4147  151.36        1s     4908.2    0.3     7024.3   2.5135      21.4       -
x57_043_002              aircraftLot       3         3.0077       4.2       1.4751     0       2.7441  151.36        1s     6192.8    0.3     8065.8   2.9829      20.7       -
x57_043_003              aircraftLot       3         3.0084       4.2       1.4749     0       2.7351  151.36        1s     6218.5    0.3     8035.4   2.9839      21         -
B0005_001                agingStudy        2         1.8408       4.2       1.5108     0       3.3788  70.91         10s    3221.9    0.2     5758.9   1.7766       24         -
B0005_002                agingStudy        2         1.8402       4.2       1.5105     0       3.3729  69.73         10s    3221.7    0.2     5754.9   1.7764      24         -
B0005_003                agingStudy        2         1.8412       4.2       1.5102     0       3.3668  69            10s    3222.9    0.2     5740.3   1.7764      24         -
B0005_004                agingStudy        2         1.8407       4.2       1.5107     0       3.361   68.51         10s    3229.5    0.2     5709.1   1.7757      24         -
B0005_005                agingStudy        2         1.5516       4.2       1.5105     0       3.6835  74.54         10s    2335.7    0.2     5168.4   1.4472      24         aged
B0005_006                agingStudy        2         1.2907       4.2       1.5106     0       3.6992  81.64         10s    1563.4    0.2     4800.6   1.1812      24         aged
btc-hg2_1_001            conditioned18650  3         2.9089       4.2       1.4992     0.24    3.5384  14.6          1s     4793.2    0.3     5612.2   2.1728      25         -
btc-hg2_1_002            conditioned18650  3         2.9109       4.2       1.4543     0       2.9701  14.6          1s     6768.3    0.3     7525.8   2.8939      25         -
btc-hg2_1_003            conditioned18650  3         2.904        4.2       1.4545     0       2.9532  14.6          1s     6770.4    0.3     7522.7   2.8939      25         -
btc-hg2_1_004            conditioned18650  3         2.8955       4.2       1.4546     0       2.9502  14.5          1s     6753.9    0.3     7500     2.8864      25         -
btc-hg2_1_005            conditioned18650  3         2.887        4.2       1.4542     0       2.9489  14.5          1s     6733.2    0.3     7477.4   2.8774       25         -
btc-hg2_4_001            conditioned18650  3         3.0115       4.2       1.5007     0.255   3.5343  14.6          1s     4913.7    0.3     5674.3   2.2125      25         -
btc-hg2_4_002            conditioned18650  3         3.0115       4.2       1.5083     0       2.9583  14.6          1s     6637.7    0.3     7376.3   2.9418      25         -
btc-hg2_4_003            conditioned18650  3         3.0043       4.2       1.5064     0       2.946   14.6          1s     6644.4    0.3     7375.9   2.9399      25         -
btc-hg2_4_004            conditioned18650  3         2.9951       4.2       1.5064     0       2.9427  14.6          1s     6629      0.3     7356.2   2.9321      25         -
btc-hg2_4_005            conditioned18650  3         2.9861       4.2       1.5084     0       2.9427  14.6          1s     6597.9    0.3     7323.5   2.9231       25         -
btc-hg2_9_001            conditioned18650  3         2.9927       4.2       1.4998     0.251   3.5345  14.6          1s     4902.4    0.3     5676.5   2.2092      25         -
btc-hg2_9_002            conditioned18650  3         2.9936       4.2       1.4977     0       2.9688  14.6          1s     6662      0.3     7404.3   2.9319      25         -
btc-hg2_9_003            conditioned18650  3         2.9871       4.2       1.4977     0       2.9553  14.6          1s     6662.9    0.3     7397     2.9308      25         -
btc-hg2_9_004            conditioned18650  3         2.9785       4.2       1.4981     0       2.9518  14.6          1s     6646.1    0.3     7374.7   2.9235      25         -
btc-hg2_9_005            conditioned18650  3         2.97         4.2       1.4979     0       2.9509  14.6          1s     6626.6    0.3     7356     2.9152      25         -
btc-hg2_9_006            conditioned18650  3         2.9864       4.2       1.4994     0       2.8951  14.5          1s     6575.2    0.3     7288.2   2.8935       25         -
hkust-H24_001            cycled21700       4.2       3.82         4.2       2.0997     0       -       13.07         1s     -         0.084   7554.2   3.8178      -          -
hkust-H24_002            cycled21700       4.2       3.8193       4.2       2.0998     0       2.8605  12.48         1s     -         0.084   7531.4   3.8212      -          -
hkust-H24_003            cycled21700       4.2       3.8183       4.2       2.0998     0       2.8593  12.76         1s     -         0.0839  7527.4   3.8203      -          -
hkust-H24_004            cycled21700       4.2       3.8099       4.2       2.0998     0       2.8574  13.88         1s     -         0.084   7606.1   3.8165      -          -
hkust-H24_005            cycled21700       4.2       3.4138       4.2       2.0997     0       2.876   18.91         1s     -         0.084   8774.9   3.4159      -          aged
hkust-H24_006            cycled21700       4.2       3.2033       4.2       2.0997     0       2.8679  14.93         1s     -         0.084   9459.2   3.2013      -          aged
hkust-H67_001            cycled18650       2.8       2.7458       4.2       1.3991     0       -       32.23         1s     6340      0.0558  8457     2.7419      -          -
hkust-H67_002            cycled18650       2.8       2.7562       4.2       1.3991     0       3.1773  29.7          1s     6490      0.0558  8288.3   2.7516      -          -
hkust-H67_003            cycled18650       2.8       2.7582       4.2       1.3995     0       3.1498  29.37         1s     6520      0.0558  8284.7   2.7594      -          -
hkust-H67_004            cycled18650       2.8       2.7398       4.2       1.4002     0       3.1436  31.03         1s     6540      0.0558  8265.4   2.7599      -          -
hkust-H67_005            cycled18650       2.8       2.439        4.2       1.4002     0       3.2769  32.32         1s     5320      0.0558  9565.4   2.4261      -          aged
hkust-H67_006            cycled18650       2.8       1.7652       4.2       1.3999     0       3.3832  38.85         1s     3170      0.0558  11128.3  1.761       -          aged
leaf_1_001               carPouch          33.1      30           4.2       10         0       3.07    -             -      10335     3.31    11085.3  29.9230       10         -
leaf_1_002               carPouch          33.1      30           4.2       10         0       -       -             -      10542     3.31    10875.9  29.7986       25         -
leaf_1_003               carPouch          33.1      30           4.2       10         0       3.075   -             -      11027.1   3.31    11239.4  30.9630       40         -
`

export interface ChargeRun {
  readonly id: string
  readonly dataset: DatasetName
  readonly nameplate_Ah: number
  readonly measured_Ah: number
  readonly cutoff_V: number
  readonly current_A: number
  readonly start: number
  readonly rest_V: number | undefined
  readonly reading_ohm: number | undefined
  readonly timeToCutoff_s: number | undefined
  readonly termination_A: number
  readonly timeToTermination_s: number
  readonly putBack_Ah: number
  readonly ambient_C: number | undefined
}

export const chargeRuns: readonly ChargeRun[] = table
  .trim()
  .split('\n')
  .slice(1)
  .map(line => {
    const [id = '', dataset = '', ...cells] = line.split(/\s+/)
    if (!(dataset in datasets)) throw new Error(`${id} is of no dataset: ${dataset}`)
    const numbers = cells.map(cell => (cell === '-' ? undefined : Number(cell)))
    const at = (index: number) => numbers[index] as number
    return {
      id,
      dataset: dataset as DatasetName,
      nameplate_Ah: at(0),
      measured_Ah: at(1),
      cutoff_V: at(2),
      current_A: at(3),
      start: at(4),
      rest_V: numbers[5],
      reading_ohm: numbers[6] === undefined ? undefined : numbers[6] / 1000,
      timeToCutoff_s: numbers[8],
      termination_A: at(9),
      timeToTermination_s: at(10),
      putBack_Ah: at(11),
      ambient_C: numbers[12],
    }
  })

/** Charges of one cell that follow each other, in order of time. */
export const cellOfRun = ({ id }: ChargeRun): string =>
  id.replace(/_(\d{3}|\d{3}_\d{1,2}|c\d_cyc\d+|step\d+|\d+_\d+_\d+_c\d|\d+_N\d+)$/, '')
