// Package derate says what the public derating tables allow a wire: AC 43.13-1B
// table 11-9, and its method of free-air current, bundle factor and altitude factor
// (paragraphs 11-66 to 11-69, the factors being those of MIL-W-5088L).
//
// Nothing is said beyond the data. Between given points values are interpolated: in
// a straight line, or with the square root of the temperature rise. Past the last
// point, for a size or a number of wires that no table has, there is no value.
package derate
