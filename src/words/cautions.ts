/** What is said before the first ride. */
export const cautionsWords = {
  title: 'Before the first ride',
  intro: 'A game teaches timing, not traffic.',
  short: [
    'On a real bike practise on a quiet, flat, closed place first.',
    'Eyes on the road, not on the chain. Brakes, helmet and the law of your place come first.',
    'Children ride with an adult in charge.',
    'Pain in knees or chest: stop, and ask a doctor.',
  ],
  accept: 'Understood, ride',
  more: 'More on care',
};
