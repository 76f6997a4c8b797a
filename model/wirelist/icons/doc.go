// Package icons takes off a cell of Markdown what is a picture or a slant and no text.
package icons
