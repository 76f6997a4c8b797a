package icons

import "strings"

// Without takes the pictures that Markdown writes as words between colons off a cell that says something besides, ":sun:
// lamp".
func Without(cell string) string {
	if strings.Count(cell, ":") < 2 {
		return cell
	}
	var b strings.Builder
	for i := 0; i < len(cell); {
		if n := iconAt(cell, i); n > 0 {
			b.WriteByte(' ')
			i += n
			continue
		}
		b.WriteByte(cell[i])
		i++
	}
	if plain := strings.Join(strings.Fields(b.String()), " "); strings.Trim(plain, "*_` ") != "" {
		return plain
	}
	return cell
}

// iconAt is the length of the icon at a place of a cell; 0 where none is. Blanks or other icons stand round it.
func iconAt(cell string, i int) int {
	if cell[i] != ':' || i > 0 && cell[i-1] != ' ' && cell[i-1] != ':' && cell[i-1] != '*' {
		return 0
	}
	end := strings.IndexByte(cell[i+1:], ':')
	if end < 2 || cell[i+1] < 'a' || cell[i+1] > 'z' || strings.Trim(cell[i+1:i+1+end], "abcdefghijklmnopqrstuvwxyz0123456789_+-") != "" {
		return 0
	}
	n := end + 2
	if i+n < len(cell) && cell[i+n] != ' ' && cell[i+n] != ':' && cell[i+n] != '*' && cell[i+n] != '[' {
		return 0
	}
	return n
}

// WithoutStars takes the stars of slanted words off a cell that begins with them, "*horn* (long mast)".
func WithoutStars(cell string) string {
	if len(cell) < 3 || cell[0] != '*' || cell[1] == '*' || cell[1] == ' ' {
		return cell
	}
	end := strings.IndexByte(cell[1:], '*')
	if end < 1 || cell[end] == ' ' || end+2 < len(cell) && cell[end+2] != ' ' {
		return cell
	}
	return strings.Join(strings.Fields(cell[1:end+1]+cell[end+2:]), " ")
}
