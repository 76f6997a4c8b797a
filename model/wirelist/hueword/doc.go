// Package hueword holds the words for colours of wires in many languages, and the colours that no code of colours has.
//
// It knows words, and no text; package value reads those.
package hueword
