// Dangers in German.

import type { DangerRule } from '../rules/rule.ts'

export const german: readonly DangerRule[] = [
  {
    danger: 'swollen',
    tells: `aufgeblah*, geblaht*, aufgequollen, gequollen, angeschwollen, geschwollen, dicke backen,
      dick geworden, bisschen dick, dicker geworden, ist dick, ballon, wie ein kissen, beule am,
      bauch bekommen, bauchlein, hat einen bauch, ausgebeult, rund geworden, weich geworden`,
    passes: true,
  },
  {
    danger: 'pierced',
    tells: `durchstoch*, angestoch*, eingedruckt*, zerdruckt*, gequetscht*,
      loch .2 im|in .3 akku|lipo|zelle|folie|hulle, delle .3 akku|lipo|zelle|ecke,
      akku|lipo|zelle|folie|hulle .4 loch|delle|riss|kratzer|schnitt|eingerissen|aufgerissen|beschadigt|kaputt,
      lauft aus, ausgelaufen, angebissen, aufgeschlitzt`,
    passes: true,
  },
  {
    danger: 'crashed',
    tells: 'abgesturzt, absturz, runtergefallen, heruntergefallen, in den baum, in den acker, nase voran',
    passes: true,
  },
  {
    danger: 'wet',
    tells: `ins wasser gefallen, im wasser, in den see|teich|bach|fluss, im see|teich|bach|fluss gelandet,
      nass geworden, ist nass, war nass, durchnasst, im regen, in der waschmaschine, waschmaschine,
      feucht geworden, abgetrocknet, in die pfutze`,
    passes: true,
  },
  {
    danger: 'hotPack',
    tells: `noch heiss, noch warm, zu heiss, ganz heiss, sehr heiss, sehr warm, akku|lipo|pack .3 heiss,
      wird heiss, glutheiss, direkt nach dem flug, gleich nach dem landen, gerade gelandet, kaum halten,
      nicht anfassen kann, fast nicht halten`,
  },
  {
    danger: 'coldPack',
    tells: `eiskalt, gefroren, tiefgefroren, unter null .4 laden, bei minus, im kalten auto,
      minus # .8 auto|kofferraum|garage|balkon|keller, auto|kofferraum|garage|balkon .8 minus #,
      frost .4 laden, unter # grad laden`,
    excuses: 'im wohnzimmer, zum gluck, in der wohnung, im haus, im warmen, lag drinnen, in der kuche',
  },
  {
    danger: 'fire',
    tells: `brennt, raucht, qualmt, zischt, rauch, flammen, feuer gefangen, verschmort, schmort, knistert,
      stinkt, riecht .4 nagellack|susslich|verbrannt|suss`,
  },
  {
    danger: 'injury',
    tells: `ins auge, auf die haut, auf der haut, verbrannt .3 finger|hand, finger .3 verbrannt, verbrennung,
      stromschlag, eine gewischt, rauch eingeatmet, brennt auf`,
  },
  {
    danger: 'unattended',
    tells: `uber nacht, ubernacht, unbeaufsichtigt, allein lassen, alleine lassen, allein laden, alleine laden,
      wahrend ich schlaf*, wenn ich schlafe, schlafen gehe, ins bett, bis morgen fruh,
      niemand .3 zuhause|da|dabei, ohne aufsicht, wahrend ich .4 weg|arbeiten|einkaufen|dusche|arbeit,
      einkaufen gehe, bin .3 weg, aus dem haus, wahrend der arbeit, wenn ich nicht da, geh .3 einkaufen,
      gehe .4 duschen|einkaufen|schlafen|spazieren`,
    excuses: 'bleibe dabei, sitze daneben, setze mich daneben, bin dabei, nicht uber nacht',
  },
  {
    danger: 'movingVehicle',
    tells: `wahrend der fahrt, beim fahren, wahrend wir fahren, im fahrenden auto, fahren .8 ladegerat|lade,
      fahrt .6 laden|lade|ladegerat, lade .6 fahrt|autobahn, im zug .3 laden, autobahn .8 ladegerat,
      unterwegs laden`,
    excuses: 'bleibt aus, erst wenn wir .3 sitzen, am platz, wenn wir stehen, geparkt',
  },
  {
    danger: 'softBed',
    tells: `auf dem bett|sofa|teppich|kissen|couch|polster, im bett, auf der couch|decke|matratze,
      unter der decke, unter dem kissen`,
    excuses: 'ich auf dem sofa, ich auf der couch, ich im bett',
  },
  {
    danger: 'tooLow',
    tells: `tiefentladen, tief entladen, tiefentladung, vergessen .4 abzustecken|auszuschalten|abzuziehen,
      nicht ausgemacht, angelassen .4 akku, akku ist tot, zelle ist tot`,
    passes: true,
  },
  {
    danger: 'revive',
    tells: `wiederbeleb*, wieder beleben, aufwecken, wachkuss*, retten .3 akku, akku .4 retten, nimh programm,
      im nimh modus`,
    passes: true,
  },
  {
    danger: 'wrongMode',
    tells: `falsches programm, falscher modus, falschen modus, im falschen, lipo im life programm,
      life im lipo programm, lihv programm .8 lipo, falsche einstellung`,
  },
  {
    danger: 'wrongCharger',
    tells: `nimh ladegerat, nimh lader, bleiladegerat, autoladegerat, handyladegerat, handy ladegerat,
      ladegerat vom|von .4 auto|roller|handy|bohrmaschine|akkuschrauber|spielzeug, falsches ladegerat`,
  },
  {
    danger: 'noCharger',
    tells: `ohne ladegerat, direkt .4 netzteil|labornetzteil|autobatterie|solarpanel|solarmodul,
      netzteil .4 direkt, solarpanel .4 direkt`,
  },
  {
    danger: 'noBalance',
    tells: `ohne balancer*, ohne balancerkabel, ohne den balancer,
      balancer*|balancerstecker|balancerkabel .4 ab|abgerissen|kaputt|defekt|fehlt|vergessen|weg,
      balancer .4 weglassen, nur uber das hauptkabel`,
  },
  { danger: 'reversed', tells: 'verpolt, plus und minus vertauscht, vertauscht, falsch herum, falschrum' },
]
