// Dangers in French.

import type { DangerRule } from '../rules/rule.ts'

export const french: readonly DangerRule[] = [
  {
    danger: 'swollen',
    tells: `gonfle|gonflee|gonfles|gonflees, a gonfle, un peu gonfle, bombe|bombee, a pris du ventre,
      du ventre, comme un coussin, boursoufl*, enfle|enflee, a enfle, rond comme, plus epais`,
    passes: true,
  },
  {
    danger: 'pierced',
    tells: `perce|percee, troue|trouee, un trou .3 batterie|pack|lipo|element|cellule,
      batterie|pack|lipo .4 trou|perce|dechire|ecrase|abime|bosse|cabosse, ecrase|ecrasee,
      dechire|dechiree, cabosse|cabossee, fuite, coule`,
    passes: true,
  },
  {
    danger: 'crashed',
    tells: 'ecrase dans|contre, plante dans, pique dans, tombe de, tombe du, est tombe, est tombee',
    passes: true,
  },
  {
    danger: 'wet',
    tells: `tombe .3 eau, dans l eau, dans leau, dans le lac|etang, dans la riviere|mer|piscine,
      mouille|mouillee, sous la pluie, trempe|trempee, machine a laver, pris la pluie`,
    passes: true,
  },
  {
    danger: 'hotPack',
    tells: `encore chaud|chaude, trop chaud|chaude, tres chaud|chaude, bien chaud, brulant|brulante,
      juste apres le vol|latterrissage, apres latterrissage, vient datterrir, chauffe .2 beaucoup|trop,
      chauffe en charge`,
    excuses: 'au chaud',
  },
  {
    danger: 'coldPack',
    tells: `gele|gelee|geles, glace|glacee, en dessous de zero, dormi .4 coffre|voiture|garage|balcon, moins #,
      coffre .8 minus #, sous zero, congele`,
    excuses: 'au salon, a linterieur, dans la maison, au chaud',
  },
  {
    danger: 'fire',
    tells: `fumee, brule, en feu, prend feu, pris feu, siffle, flammes, etincelles,
      odeur .4 brule|vernis|sucre|solvant|acetone, sent .4 brule|vernis|solvant|acetone, ca sent,
      crepite`,
  },
  {
    danger: 'injury',
    tells: `dans loeil, dans les yeux, sur la peau, sur les mains, sur les doigts, me suis brule,
      brule .3 doigts|main, respire la fumee, respire .3 fumees, coup de jus, electrocute`,
  },
  {
    danger: 'unattended',
    tells: `toute la nuit, la nuit .4 charg*, charg* .5 nuit, sans surveillance, sans surveiller,
      pendant que je dors, pendant mon sommeil, je dors, vais dormir, vais me coucher, au lit,
      jusquau matin, demain matin, personne .3 maison|la, laisser .4 seul|seule|charger,
      laisse .4 charger .3 seul, pendant que je .4 travaille|douche|courses|sors,
      je vais .4 courses|boulangerie|travail, sans personne`,
    excuses: 'je reste, a cote, assis a cote, je surveille, pas la nuit',
  },
  {
    danger: 'movingVehicle',
    tells: `en roulant, en conduisant, pendant le trajet, pendant la route, sur la route,
      sur lautoroute .6 charg*, dans le train .4 charg*, voiture qui roule, pendant quon roule,
      je roule .4 charge`,
    excuses: 'une fois gare, une fois arrive, gare a cote, a larret',
  },
  {
    danger: 'softBed',
    tells: `sur le lit|canape|tapis|coussin, sur la couette|moquette|couverture, sous la couette|couverture,
      sur mon lit, dans le lit`,
    excuses: 'moi sur le canape, me on the canape, je suis sur le canape, and me',
  },
  {
    danger: 'tooLow',
    tells: `decharge profonde, completement vide, trop decharge|dechargee,
      oublie .4 debrancher|brancher|branche|allume, batterie morte, element mort, a plat complet`,
    passes: true,
  },
  {
    danger: 'revive',
    tells: `reveiller, ressusciter, ranimer, reanimer, recuperer .3 batterie|lipo|pack,
      sauver .3 batterie|lipo|pack, mode nimh, programme nimh`,
    passes: true,
  },
  {
    danger: 'wrongMode',
    tells: 'mauvais mode, mauvais programme, en mode nimh, en mode life, en mode lihv, mauvais reglage',
  },
  {
    danger: 'wrongCharger',
    tells: `chargeur nimh, chargeur .4 nimh, chargeur .2 plomb,
      chargeur de .3 voiture|telephone|perceuse|trottinette|tondeuse|jouet,
      chargeur de batterie de voiture, mauvais chargeur`,
  },
  {
    danger: 'noCharger',
    tells: `sans chargeur, direct|directement .4 alimentation|alim|panneau|batterie de voiture,
      panneau .4 direct|directement, alim .4 directement`,
  },
  {
    danger: 'noBalance',
    tells: `sans equilibrage, sans equilibreur, sans la prise dequilibrage,
      prise dequilibrage .4 cassee|arrachee|coupee|absente, sans le balancer, pas branche .3 equilibrage`,
  },
  {
    danger: 'reversed',
    tells: `inverse .3 polarite|fils|plus, polarite inversee, plus et moins inverses, branche a lenvers,
      a lenvers`,
  },
]
