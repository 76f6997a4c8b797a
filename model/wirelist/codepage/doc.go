// Package codepage reads texts of one byte a letter that do not say in which code page they are, by the letters of languages.
//
// It knows letters and no lists.
package codepage
