package edit

// MentionPaths are the fields of the table of mentions.
func MentionPaths() []string {
	return each(mentions, func(m *mention) string { return m.path })
}
