package alike

import "strings"

// bracketsFirst writes what stands in brackets behind each near end before it, where all have values of the wire there: the end is what a
// text is taken to end with.
//
//	HUB A1 (lid open, green) -> lid switch 1
func bracketsFirst(near []string) []string {
	made := make([]string, len(near))
	for i, t := range near {
		front, inner := bracketed(t)
		if front == "" || inner == "" {
			return near
		}
		made[i] = strings.NewReplacer("; ", ", ", " / ", ", ", " - ", ", ").Replace(inner) + ", " + front
	}
	return made
}
