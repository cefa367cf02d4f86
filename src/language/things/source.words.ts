// What is said of sources that cannot be read, and of what their readers had to assume.

import type { Offer } from '../../charging/things/source.ts'
import { type Said, told } from '../../ground/locale.ts'

export const aSource: Said = ({ say }) =>
  say`a USB PD supply, volts with amps or watts, a vehicle outlet, a power bank, a battery or the watts of a generator`
export const unknownKind: Said = ({ say }) => say`I cannot tell what kind of source that is.`
export const lacksVoltsAndAmps: Said = ({ say }) => say`That source lacks its volts and amps.`
export const lacksCurrentOrPower: Said = ({ say }) => say`That source lacks its current or power.`
export const notOneSupply: Said = ({ say }) => say`That does not add up to one supply.`
export const notOneOutlet: Said = ({ say }) => say`That does not add up to one vehicle outlet.`
export const needsWattHours: Said = ({ say }) => say`I need the watt-hours on the power bank.`
export const holdsEnough: Said = ({ say }) => say`its watt-hours were not told: it is taken to hold enough`
export const notOnePowerBank: Said = ({ say }) => say`That does not add up to one power bank.`
export const needsSupplyBehind: Said = ({ say }) =>
  say`I need its watts, or the supply that stands between it and the charger.`
export const needsBatteryBehind: Said = ({ say }) =>
  say`A panel gives what the sun gives: I need the watts on its label, or the battery that it fills.`
export const supplyPhrase: Said = ({ say }) => say`a supply voltage`
export const powerPhrase: Said = ({ say }) => say`watts and volts that make a current`
export const capacityPhrase: Said = ({ say }) => say`a source's capacity`
export const leadRestPhrase: Said = ({ say }) => say`a lead-acid resting voltage`
export const usbPdPhrase: Said = ({ say }) => say`a USB PD power`
export const asPowerDelivery: Said = ({ say }) => say`a USB-C supply named by its watts is read as USB Power Delivery`

export const plainUsbGives = told(
  ({ say, show }, volts: number) => say`plain USB is taken to give ${show.voltage(volts)}`,
)

export const stationSocket = told(
  ({ say, show }, { voltage_V, current_A }: Offer) =>
    say`the power station's car socket is taken, ${show.voltage(voltage_V)} and ${show.current(current_A)}`,
)

export const startsNothing: Said = ({ say }) =>
  say`the lead battery is taken to start no engine: half of its label may be used, of a starter battery a fifth`

export const engineTakenOff: Said = ({ say }) => say`the engine is taken to be off`

export const fuseTaken = told(
  ({ say, show }, fuse_A: number) => say`a fuse of ${show.current(fuse_A)} is taken, as most such outlets have`,
)

export const clipsTaken = told(
  ({ say, show }, fuse_A: number) => say`a lead with a fuse of ${show.current(fuse_A)} is taken, clipped to its poles`,
)

export const asNominal = told(
  ({ say, show }, volts: number) => say`${show.voltage(volts)} is read as the outlet's nominal voltage`,
)

export const bareAsMilliampHours = told(({ say, own }, numeral: string) => say`${own(numeral)} is read as mAh`)

export const countedAt = told(
  ({ say, show }, volts: number) =>
    say`the power bank's mAh are counted at ${show.voltage(volts)}, the voltage of its cells`,
)

export const toldAsItLeaves = told(
  ({ say, show }, { label_Wh, volts }: { readonly label_Wh: number; readonly volts: number }) =>
    say`the power bank's mAh are told at ${show.voltage(volts)}, as they leave it: counted as ${show.energy(label_Wh)} inside, and a little less comes out at higher volts`,
)

export const wattHoursCount: Said = ({ say }) => say`the power bank's watt-hours count, its mAh are not used`
export const onlyInPercent: Said = ({ say }) => say`How full a power bank is can only be told in percent.`
export const aPercentage: Said = ({ say }) => say`a percentage`
