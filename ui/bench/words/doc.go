// Package words puts values into words.
package words
