// Package commas parts texts at the commas between their pieces. A comma between two digits is a decimal one, and parts nothing.
//
// It knows signs and digits, and no words.
package commas
