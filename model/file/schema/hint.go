package schema

import "strings"

// nearest is the known name that a person most likely meant, "" where none is near.
func nearest(name string, known []string) string {
	const longest = 40 // no key is longer: a longer one is no slip of the finger
	if len(name) > longest {
		return ""
	}
	best, least := "", 3 // more than two slips is another word
	for _, k := range known {
		n := slips(strings.ToLower(name), k)
		if n < least && n < len(k) {
			best, least = k, n
		}
	}
	return best
}

// slips counts the letters to put in, leave out or change to make b of a
// (Levenshtein distance).
func slips(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		diagonal := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := diagonal
			if a[i-1] != b[j-1] {
				change++
			}
			diagonal = row[j]
			row[j] = min(change, row[j]+1, row[j-1]+1)
		}
	}
	return row[len(b)]
}
