// Package derate says what the public derating tables allow a wire: AC 43.13-1B
// table 11-9, and its method of free-air current, bundle factor and altitude factor
// (paragraphs 11-66 to 11-69, the factors being those of MIL-W-5088L).
//
// Between given points values are interpolated: in a straight line, or with the square
// root of the temperature rise. Where the data end, the last point is held and Held says
// so: no value rises with warmer air, thinner air, more wires or more load.
package derate
