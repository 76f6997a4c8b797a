// Package freeword holds the words that say in many languages that a cavity is free, kept for something, or has a spare wire. Common
// practice and common words, no source.
//
// It knows words alone, folded; package name says what a cell says.
package freeword
