package catalogue

import (
	"slices"
	"strconv"
	"strings"
)

// The letters of cavity names leave out those that are read as another letter or
// as a digit. From memory of MIL-STD-1560, not verified.
const cavityLetters = "ABCDEFGHJKLMNPRSTUVWXYZabcdefghjkmnpqrstuvwxyz"

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

// cavityNames names the cavities of an insert whose file does not. Arrangements
// that are mostly of the small contacts (22D, 22M, 22, 23) number from 1, the
// others are lettered: A to Z, a to z, then AA, BB. From memory of MIL-STD-1560.
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
