package titleline

// CommaParts parts a text at its commas, those in brackets left alone.
func CommaParts(text string) (all []string) {
	from, deep := 0, 0
	for i := range len(text) {
		switch text[i] {
		case '(', '[':
			deep++
		case ')', ']':
			deep--
		case ',':
			if deep <= 0 {
				all = append(all, text[from:i])
				from = i + 1
			}
		}
	}
	return append(all, text[from:])
}
