// Package squaremm writes mm² in columns of sizes where people wrote mm for it: "0.75mm", "2,5 mm".
//
// Its words: a usual section is a number that wire is made in, in mm². A column is taken where its heading says the size of the wire
// and all of its sizes, or nearly all, are usual sections. A diameter or a length stays what it is.
package squaremm
