// Dangers in Dutch.

import type { DangerRule } from '../rules/rule.ts'

export const dutch: readonly DangerRule[] = [
  {
    danger: 'swollen',
    tells: `opgezwollen, gezwollen, opgezet, bol geworden, bolle, opgeblazen, dik geworden, dikker geworden,
      een buikje, staat bol, bol staan`,
    passes: true,
  },
  {
    danger: 'pierced',
    tells: `doorboord, lek geprikt, lekgeprikt, gat .3 accu|cel|lipo|folie,
      accu|cel|lipo|folie .4 gat|deuk|scheur|gescheurd|geplet|beschadigd, ingedeukt, gedeukt, geplet,
      gescheurd, lekt`,
    passes: true,
  },
  { danger: 'crashed', tells: 'gecrasht, neergestort, neergestorte, gevallen, in een boom, in de boom', passes: true },
  {
    danger: 'wet',
    tells: `in het water, in de sloot|vijver|plas|zee|rivier, nat geworden, is nat, was nat, drijfnat,
      doorweekt, in de regen, in de wasmachine, vochtig`,
    passes: true,
  },
  {
    danger: 'hotPack',
    tells: `nog heet, nog warm, te heet, erg warm, heel warm, gloeiend heet, wordt heet, wordt warm,
      net geland, direct na de vlucht, meteen na de vlucht, is heet`,
  },
  {
    danger: 'coldPack',
    tells: `bevroren, ijskoud, onder nul, onder het vriespunt, in de koude auto, de hele nacht in de auto,
      vriest .4 laden, bij min`,
  },
  {
    danger: 'fire',
    tells: `rook, rookt, brandt, in brand, vlammen, sist, sissen, vonken, stinkt,
      ruikt .4 nagellak|zoet|verbrand|aceton, smeult, knettert`,
  },
  {
    danger: 'injury',
    tells: `in mijn oog, in het oog, op mijn huid, op de huid, op mijn handen, hand verbrand, vinger verbrand,
      vingers verbrand, rook ingeademd, stroomstoot, schok gekregen`,
  },
  {
    danger: 'unattended',
    tells: `s nachts, de hele nacht, een nacht laden, overnacht, onbeheerd, zonder toezicht, alleen laten,
      alleen laden, terwijl ik slaap, als ik slaap, ga slapen, naar bed, tot morgenochtend, tot morgen,
      niemand .3 thuis|bij, terwijl ik .4 weg|werk|douche|boodschappen, ga .3 boodschappen, weg ben,
      van huis`,
    excuses: 'blijf erbij, zit ernaast, ik zit erbij, niet s nachts',
  },
  {
    danger: 'movingVehicle',
    tells: `tijdens het rijden, onder het rijden, tijdens de rit, terwijl we rijden, terwijl ik rijd,
      onderweg laden, laden .3 onderweg, in de trein .3 laden, op de snelweg .5 laden`,
    excuses: 'geparkeerd, stilstaan, als we er zijn',
  },
  {
    danger: 'softBed',
    tells: `op het bed, op bed, op de bank, op het tapijt, op een kussen, op het kussen, onder de deken,
      op de deken, op het kleed, op het matras`,
    excuses: 'ik op de bank, ik zit op de bank',
  },
  {
    danger: 'tooLow',
    tells: `diep ontladen, diepontladen, helemaal leeg, vergeten .4 los|uit|koppelen, cel is dood,
      accu is dood, aan laten staan`,
    passes: true,
  },
  {
    danger: 'revive',
    tells: `reanimeren, weer tot leven, wakker maken, opwekken, redden .3 accu, accu .4 redden, nimh programma,
      nimh stand`,
    passes: true,
  },
  {
    danger: 'wrongMode',
    tells: `verkeerde programma, verkeerd programma, verkeerde stand, verkeerde modus, verkeerde instelling,
      op lihv .6 lipo, op life .6 lipo`,
  },
  {
    danger: 'wrongCharger',
    tells: `nimh lader, nimh oplader, loodlader, acculader van .3 auto,
      lader van .4 auto|boormachine|telefoon|step|fiets|speelgoed, telefoonlader, verkeerde lader,
      verkeerde oplader`,
  },
  {
    danger: 'noCharger',
    tells: `zonder lader, zonder oplader, rechtstreeks .4 voeding|zonnepaneel|auto accu|autoaccu,
      direct op .2 voeding|zonnepaneel|autoaccu, zonnepaneel .4 rechtstreeks|direct`,
  },
  {
    danger: 'noBalance',
    tells: `zonder balanceerstekker, zonder balanceren, zonder balancer, balansstekker .4 kapot|af|los|stuk,
      balanceerstekker .4 kapot|af|los|stuk|afgebroken, zonder balansstekker`,
  },
  {
    danger: 'reversed',
    tells: 'verkeerd om, omgekeerd aangesloten, plus en min verwisseld, verkeerde polariteit, omgepoold',
  },
]
