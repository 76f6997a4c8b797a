package words

func MemMark(mem bool) string { return map[bool]string{true: "~", false: ""}[mem] }
