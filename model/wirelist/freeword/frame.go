package freeword

import "strings"

// Unframed takes off a word the dashes that frame it, "--- nothing ---"; a dash alone stays.
func Unframed(word string) string {
	if n := len(word); n > 4 && word[0] == '-' && word[n-1] == '-' && strings.Trim(word, "- ") != "" {
		return strings.Trim(word, "- ")
	}
	return word
}
