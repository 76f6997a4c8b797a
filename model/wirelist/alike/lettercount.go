package alike

import "regexp"

// letterForms are the ways in which a letter that counts lines stands before them.
var letterForms = []*regexp.Regexp{
	regexp.MustCompile(`^([A-Za-z])[.)] +(.+)$`),
	regexp.MustCompile(`^\(([A-Za-z])\) +(.+)$`),
}

// withoutLetters takes the letters that count lines off their front: in one form and in the order of the alphabet, with an end behind most
// of them. ok is false where they have none.
//
//	a) ECU pin 31 to boost valve pin 1
//	b) ECU pin 32 to boost valve pin 2
func withoutLetters(texts []string) (bare []string, ok bool) {
	if len(texts) < 2 {
		return nil, false
	}
	for _, form := range letterForms {
		bare = nil
		last, ends := "", 0
		for _, t := range texts {
			m := form.FindStringSubmatch(t)
			if m == nil || m[1] <= last {
				break
			}
			last, bare = m[1], append(bare, m[2])
			if beginsWithEnd(m[2]) {
				ends++
			}
		}
		if len(bare) == len(texts) && 5*ends >= 3*len(texts) {
			return bare, true
		}
	}
	return nil, false
}
