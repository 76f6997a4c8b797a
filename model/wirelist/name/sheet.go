package name

import "strings"

// BaseName is a file name without folders and ending.
func BaseName(file string) string {
	file = file[strings.LastIndexAny(file, `/\`)+1:]
	if i := strings.LastIndexByte(file, '.'); i > 0 {
		file = file[:i]
	}
	return strings.ReplaceAll(file, ":", "-")
}
