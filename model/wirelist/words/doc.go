// Package words holds the words that head the columns of lists, in many languages, and the field that each of them means.
//
// It knows words, and nothing of what stands below them. A shop adds its own in a recipe.
package words
