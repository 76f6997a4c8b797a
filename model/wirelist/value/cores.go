package value

import "strings"

// earthedCores writes a cable that counts its cores with one for earth, "3G1.5", as other lists write it, "3x1.5"; its sizes are in
// mm². ok is false for all else. EN 50525 and its forerunners mark cables so; from memory, no source.
func earthedCores(text string) (as string, ok bool) {
	n := 0
	for n < len(text) && n < 3 && text[n] >= '0' && text[n] <= '9' {
		n++
	}
	if n == 0 || n > 2 {
		return "", false
	}
	rest, g := strings.CutPrefix(strings.ToLower(strings.TrimLeft(text[n:], " ")), "g")
	rest = strings.TrimLeft(rest, " ")
	if !g || rest == "" || rest[0] < '0' || rest[0] > '9' {
		return "", false
	}
	return text[:n] + "x" + rest, true
}
