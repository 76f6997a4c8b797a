// Package sidehead reads headings in two rows, of which the first names both ends of the wires and the second says
// the same words below each.
//
//	                 END 1               END 2
//	Item | Size    | Place | Stud | Lug | Place | Stud | Lug
//	T1   | 35 mm2  | BAT   | +    | M10 | K1    | IN   | M8
//
// It says of each column below an end whether it names the place, the cavity there, or what is fitted to that end of the
// wire. It looks at no cell below the headings.
package sidehead
