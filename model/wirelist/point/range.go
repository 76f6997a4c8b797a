package point

import (
	"strings"

	"contralay/model/wirelist/name"
)

// A list of points may say of several cavities at once that they are free: "K to V - empty", "9-12: spare".

// CutRange parts such a point in the range and what it is; ok is false for any other, "2-4 m of tube" among them.
func CutRange(text string) (pin, rest string, ok bool) {
	for _, mark := range []string{" - ", " – ", ": ", " = ", " ", "\t"} {
		for at := strings.Index(text, mark); at > 0; {
			front, back := strings.TrimSpace(text[:at]), strings.TrimSpace(text[at+len(mark):])
			front = strings.TrimRight(strings.ReplaceAll(front, ". ", " "), ".:") // "4. to 6. spare"
			if _, _, ranged := RangeOf(front); ranged && name.StateOf(back) != name.Used && back != "" {
				return front, back, true
			}
			next := strings.Index(text[at+len(mark):], mark)
			if next < 0 {
				break
			}
			at += len(mark) + next
		}
	}
	return "", "", false
}

// RangeOf gives the first and the last cavity of a range, "K to V", "9-12"; ok is false where it is none.
func RangeOf(pin string) (from, to string, ok bool) {
	if !strings.ContainsAny(pin, "-–—.…") && strings.Count(pin, " ") < 2 || !name.LooksLikeRange(pin) {
		return "", "", false
	}
	all := strings.FieldsFunc(strings.NewReplacer(" to ", "-", " thru ", "-", " through ", "-", " bis ", "-", "..", "-", "…", "-", "–", "-",
		"—", "-").Replace(pin), func(r rune) bool { return r == '-' || r == ' ' })
	if len(all) != 2 {
		return "", "", false
	}
	return all[0], all[1], true
}

// Follows reports whether a cavity is the next one behind another: the next number, or the next letter but those that connectors leave
// out.
func Follows(pin string, last, at int) bool {
	if at == last+1 {
		return true
	}
	if strings.ContainsAny(pin, "0123456789") || last == 0 || at <= last {
		return false
	}
	for n := last + 1; n < at; n++ {
		if strings.IndexByte("ioq", byte('a'+n-1)) < 0 {
			return false
		}
	}
	return true
}
