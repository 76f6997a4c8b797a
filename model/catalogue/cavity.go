package catalogue

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// The letters of cavity names leave out those that are read as another letter or
// as a digit. From memory of MIL-STD-1560, not verified.
const cavityLetters = "ABCDEFGHJKLMNPRSTUVWXYZabcdefghjkmnpqrstuvwxyz"

// ruleOfNames is the source of names that cavityNames makes.
const ruleOfNames = "the rule of letters and numbers, from memory of MIL-STD-1560, not verified"

// Count is the number of cavities.
func (i Insert) Count() int { return len(i.Cavities) }

// Has reports whether the insert has a cavity of this name. Case counts: A and a
// are two cavities.
func (i Insert) Has(name string) bool { return slices.Contains(i.Cavities, name) }

// ContactSize is the contact size of a cavity, or "" where the insert lacks the
// cavity or where it holds several sizes and which cavity has which is not known.
func (i Insert) ContactSize(cavity string) string {
	if len(i.Contacts) == 0 || !i.Has(cavity) {
		return ""
	}
	for _, g := range i.Contacts {
		if slices.Contains(g.Cavities, cavity) {
			return g.Size
		}
	}
	size := i.Contacts[0].Size
	for _, g := range i.Contacts {
		if g.Size != size {
			return ""
		}
	}
	return size
}

// Names lists the insert's names, the first name first.
func (i Insert) Names() []string { return append([]string{i.ID}, i.Aliases...) }

// mostParts is how many names and runs of names a message has room for.
const mostParts = 14

// NamesList is the names of cavities in few words, "1 to 66" or "A to H, J to N, P": runs of
// three and more are shortened, and of what is still long the end is counted.
func NamesList(names []string) string {
	var parts []string
	for k := 0; k < len(names); {
		last := k
		for last+1 < len(names) && follows(names[last], names[last+1]) {
			last++
		}
		if last-k < 2 {
			last = k
			parts = append(parts, names[k])
		} else {
			parts = append(parts, names[k]+" to "+names[last])
		}
		k = last + 1
		if len(parts) == mostParts && k < len(names) {
			return fmt.Sprintf("%s and %d more", strings.Join(parts, ", "), len(names)-k)
		}
	}
	return strings.Join(parts, ", ")
}

// follows reports whether b is the next number or letter after a, or the next letter
// written as often: 9 and 10, H and J not, H and I, AA and BB.
func follows(a, b string) bool {
	if n, err := strconv.Atoi(a); err == nil {
		return b == strconv.Itoa(n+1)
	}
	return len(a) == len(b) && a != "" && isLetter(a[0]) && isLetter(b[0]) && b[0] == a[0]+1 &&
		a == strings.Repeat(a[:1], len(a)) && b == strings.Repeat(b[:1], len(a))
}

func isLetter(c byte) bool { return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' }

// cavityNames names the cavities of an insert whose file does not. Arrangements
// that are mostly of the small contacts (22D, 22M, 22, 23) number from 1, the
// others are lettered: A to Z, a to z, then AA, BB. From memory of MIL-STD-1560:
// the drawings have exceptions, so what has a source has its names in the data.
func cavityNames(groups []InsertContacts) []string {
	small, total := 0, 0
	for _, g := range groups {
		total += g.Count
		if isSmall(g.Size) {
			small += g.Count
		}
	}
	names := make([]string, total)
	for k := range names {
		if 2*small > total {
			names[k] = strconv.Itoa(k + 1)
		} else {
			letter := cavityLetters[k%len(cavityLetters)]
			names[k] = strings.Repeat(string(letter), 1+k/len(cavityLetters))
		}
	}
	return names
}

func isSmall(contact string) bool {
	switch contact {
	case "22D", "22M", "22", "23":
		return true
	}
	return false
}
