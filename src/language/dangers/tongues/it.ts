// Dangers in Italian.

import type { DangerRule } from '../rules/rule.ts'

export const italian: readonly DangerRule[] = [
  {
    danger: 'swollen',
    tells: `gonfia|gonfio|gonfie|gonfi, gonfiata|gonfiato, si e gonfiata, si e gonfiato, rigonfia, panciuta,
      ha la pancia, come un cuscino`,
    passes: true,
  },
  {
    danger: 'pierced',
    tells: `bucata|bucato, forata|forato, perforata, buco .3 batteria|cella|lipo,
      batteria|cella|lipo .4 buco|ammaccatura|taglio|rotta|schiacciata, ammaccata|ammaccato,
      schiacciata|schiacciato, strappata, perde liquido`,
    passes: true,
  },
  {
    danger: 'crashed',
    tells: `precipitato, precipitata, schiantato, si e schiantato, e caduto, e caduta, caduto dal, caduta dal`,
    passes: true,
  },
  {
    danger: 'wet',
    tells: `caduta .3 acqua, caduto .3 acqua, nellacqua, in acqua, nel lago|fiume|mare|stagno, bagnata|bagnato,
      sotto la pioggia, in lavatrice, umida|umido, fradicia`,
    passes: true,
  },
  {
    danger: 'hotPack',
    tells: `ancora calda|caldo, troppo calda|caldo, molto calda|caldo, bollente, scotta, appena atterrato,
      subito dopo il volo, si scalda, e calda`,
  },
  {
    danger: 'coldPack',
    tells: `congelata|congelato, gelata|gelato, ghiacciata|ghiacciato, sotto zero, tutta la notte in macchina,
      a zero gradi`,
  },
  {
    danger: 'fire',
    tells: `fumo, fa fumo, brucia, va a fuoco, prende fuoco, preso fuoco, fiamme, fischia, sibila, scintille,
      puzza, odore .4 bruciato|dolce|smalto|acetone`,
  },
  {
    danger: 'injury',
    tells: `nellocchio, negli occhi, sulla pelle, sulle mani, sulle dita, mi sono bruciato, mi sono bruciata,
      bruciato .3 dita|mano, respirato .3 fumo, presa la scossa, preso la scossa`,
  },
  {
    danger: 'unattended',
    tells: `tutta la notte, di notte, durante la notte, incustodita, incustodito, senza sorveglianza,
      mentre dormo, mentre dormiamo, vado a dormire, vado a letto, a letto, fino a domani,
      fino al mattino, nessuno .3 casa, lasciare .4 sola|solo|carica, lascio .4 sola|solo|carica,
      mentre sono .4 fuori|lavoro, mentre .3 doccia|spesa|lavoro, vado .4 spesa|lavoro,
      da sola .3 carica`,
    excuses: 'resto vicino, sono vicino, ci sto accanto, rimango accanto, non di notte',
  },
  {
    danger: 'movingVehicle',
    tells: `mentre guido, mentre si guida, durante il viaggio, in viaggio, in movimento, guidando,
      in autostrada .5 caric*, in treno .4 caric*, mentre viaggiamo`,
    excuses: 'parcheggiato, parcheggiata, quando siamo fermi, da fermo',
  },
  {
    danger: 'softBed',
    tells: `sul letto, sul divano, sul tappeto, sul cuscino, sotto la coperta, sulla coperta, sulla moquette,
      nel letto`,
    excuses: 'io sul divano, sono sul divano',
  },
  {
    danger: 'tooLow',
    tells: `scarica profonda, completamente scarica, troppo scarica, dimenticata .3 accesa|collegata,
      dimenticato .4 collegata|acceso|staccare, batteria morta, cella morta`,
    passes: true,
  },
  {
    danger: 'revive',
    tells: `rianimare, risvegliare, resuscitare, recuperare .3 batteria|lipo, salvare .3 batteria|lipo,
      modalita nimh, programma nimh`,
    passes: true,
  },
  {
    danger: 'wrongMode',
    tells: `modalita sbagliata, programma sbagliato, impostazione sbagliata, in modalita life,
      in modalita nimh, in modalita lihv`,
  },
  {
    danger: 'wrongCharger',
    tells: `caricatore nimh, caricabatterie nimh, caricatore al piombo, caricabatterie per auto,
      caricabatterie .3 auto|telefono|trapano|monopattino,
      caricatore .3 auto|telefono|trapano|monopattino|giocattolo, caricatore sbagliato`,
  },
  {
    danger: 'noCharger',
    tells: `senza caricatore, senza caricabatterie, direttamente .4 alimentatore|pannello|batteria dellauto,
      pannello .4 direttamente, alimentatore .4 direttamente`,
  },
  {
    danger: 'noBalance',
    tells: `senza bilanciamento, senza bilanciatore, senza il connettore di bilanciamento,
      connettore di bilanciamento .4 rotto|strappato|staccato, senza bilanciare`,
  },
  { danger: 'reversed', tells: 'al contrario, polarita invertita, rosso sul nero, piu e meno invertiti' },
]
