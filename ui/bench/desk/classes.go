package desk

// Colouring is what the colours of the section tell apart. Without colour, letters
// do: a to h, with a key under the section; temperature has digits, which rise with it.
type Colouring int
