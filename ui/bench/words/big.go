package words

// BigH is how many lines a large figure takes.
const BigH = 3

// segments is a figure as seven segments draw it, three lines of three cells: the
// same in every character set, and read from across a bench.
func segments(r rune) ([BigH]string, bool) {
	switch r {
	case '0':
		return [BigH]string{" _ ", "| |", "|_|"}, true
	case '1':
		return [BigH]string{"   ", "  |", "  |"}, true
	case '2':
		return [BigH]string{" _ ", " _|", "|_ "}, true
	case '3':
		return [BigH]string{" _ ", " _|", " _|"}, true
	case '4':
		return [BigH]string{"   ", "|_|", "  |"}, true
	case '5':
		return [BigH]string{" _ ", "|_ ", " _|"}, true
	case '6':
		return [BigH]string{" _ ", "|_ ", "|_|"}, true
	case '7':
		return [BigH]string{" _ ", "  |", "  |"}, true
	case '8':
		return [BigH]string{" _ ", "|_|", "|_|"}, true
	case '9':
		return [BigH]string{" _ ", "|_|", " _|"}, true
	case '.', ',':
		return [BigH]string{" ", " ", "."}, true
	case '-':
		return [BigH]string{"  ", "__", "  "}, true
	case '/':
		return [BigH]string{"  /", " / ", "/  "}, true
	case ' ':
		return [BigH]string{"  ", "  ", "  "}, true
	}
	return [BigH]string{}, false
}

// Large draws a figure in large digits with words beside its foot; nil where it
// holds anything but a number.
func Large(figure, words string) []string {
	out := make([]string, BigH)
	for _, r := range figure {
		seg, ok := segments(r)
		if !ok {
			return nil
		}
		for k := range out {
			out[k] += seg[k] + " "
		}
	}
	if figure == "" {
		out = []string{" ", " ", "_ "}
	}
	out[BigH-1] += " " + words
	for k := range out {
		out[k] = " " + out[k]
	}
	return out
}
