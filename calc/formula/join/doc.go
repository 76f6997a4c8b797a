// Package join says whether wires fit the barrels of a crimp splice, and what to do
// where they fit none.
//
// Words. A butt splice has two barrels in line, one an end: the feed goes into one,
// what branches off into the other, and each must hold between its least and its most
// circular mils. A parallel splice has one barrel under a cap, which takes all wires
// from one side: their sum counts. Several conductors in a barrel add up
// (NASA-STD-8739.4 § 19.11), laid parallel and not twisted.
package join
