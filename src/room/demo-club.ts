// The demo club that the room opens with: an invented club, its bag and three questions it asks all the time.

export const demoClub = {
  id: 'room:heron-meadow',
  name: 'Heron Meadow Electric Flyers',
  questions: [
    'current pack: 3S 720 LiHV charger: 0.5/1/2/4A 80W 1-4S 9-20V source: PD 65W',
    'how long for 2S 450 LiPo at 0.5A from 3.7V',
    'can my 4S 5000 Li-ion charge 6 of my 3S 720 LiHV',
  ],
} as const
