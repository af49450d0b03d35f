#include "app/report/manual.h"

#include <QDir>
#include <QImage>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextList>
#include <QUrl>

#include <algorithm>

namespace rig {

namespace {

constexpr double kLineHeight = 135; // in hundredths of the font's own

struct TextPiece
{
    int begin = 0;
    int length = 0;
    QTextCharFormat format;
};

QFont manualFont(const ManualStyle& style, double pixels, Weight weight)
{
    return style.isPrinted ? plainFontOf(pixels, weight) : fontOf(pixels, weight);
}

double sizeOfBlock(const QTextBlock& block, const FontSizes& sizes)
{
    switch (block.blockFormat().headingLevel()) {
    case 0:
        return sizes.body();
    case 1:
        return sizes.title();
    default:
        return sizes.section();
    }
}

// Keys, and what is typed as a command.
bool isTypedText(const QTextCharFormat& format)
{
    return format.fontFixedPitch();
}

QTextCharFormat charFormatOf(const QTextBlock& block, const QTextCharFormat& as, const ManualStyle& style)
{
    const Look& look = style.look;
    const bool isStrong = block.blockFormat().headingLevel() > 0 || as.fontWeight() > QFont::Normal;
    QTextCharFormat format;
    format.setFont(manualFont(style, sizeOfBlock(block, look.fonts),
                              isStrong          ? Weight::SemiBold
                              : isTypedText(as) ? Weight::Medium
                                                : Weight::Regular));
    format.setFontItalic(as.fontItalic());
    format.setForeground(look.theme.color(Role::Ink));
    if (isTypedText(as))
        format.setBackground(look.theme.color(Role::StripGround));
    if (as.isAnchor() && !style.isPrinted) {
        format.setAnchor(true);
        format.setAnchorHref(as.anchorHref());
        format.setForeground(look.theme.color(Role::Accent));
        format.setFontUnderline(true);
    }
    return format;
}

void spaceBlock(const QTextBlock& block, const ManualStyle& style)
{
    const double unit = style.look.fonts.body() / 2;
    QTextBlockFormat format = block.blockFormat();
    const int level = format.headingLevel();
    const bool isCommand = format.hasProperty(QTextFormat::BlockCodeFence) || format.nonBreakableLines();
    format.setLineHeight(level > 0 ? 110 : kLineHeight, QTextBlockFormat::ProportionalHeight);
    format.setTopMargin(level == 2 ? 2 * unit : 0);
    format.setBottomMargin(isCommand ? 0 : block.textList() ? unit / 2 : unit);
    format.setNonBreakableLines(false);
    QTextCursor{block}.setBlockFormat(format);
}

// Its picture where it has one, no wider than there is room for.
QImage pictureOf(const QString& name, double width)
{
    QImage picture{QDir::cleanPath(manualFolder() + name)};
    if (!picture.isNull() && picture.width() > width)
        picture = picture.scaledToWidth(static_cast<int>(width), Qt::SmoothTransformation);
    return picture;
}

// Paper takes the picture as fine as it is, the screen as large as it is shown: it would be drawn coarsely.
void placePicture(QTextDocument& document, QTextImageFormat& format, const ManualStyle& style)
{
    const QString name = format.name();
    const QImage shown = pictureOf(name, style.width);
    document.addResource(QTextDocument::ImageResource, QUrl{name},
                         style.isPrinted ? pictureOf(name, 1e6) : shown);
    format.setWidth(shown.width());
    format.setHeight(shown.height());
}

void captionPicture(const QTextBlock& picture, const QString& caption, const ManualStyle& style)
{
    QTextCharFormat format;
    format.setFont(manualFont(style, style.look.fonts.label(), Weight::Regular));
    format.setForeground(style.look.theme.color(Role::InkSoft));
    QTextBlockFormat below;
    below.setBottomMargin(style.look.fonts.body());
    QTextCursor cursor{picture};
    cursor.movePosition(QTextCursor::EndOfBlock);
    cursor.insertBlock(below, format);
    cursor.insertText(caption, format);
}

// The picture is all that stands in the block.
void layOutPicture(QTextDocument& document, const QTextBlock& block, TextPiece& piece,
                   const ManualStyle& style)
{
    QTextImageFormat format = piece.format.toImageFormat();
    const QString caption = format.stringProperty(QTextFormat::ImageAltText);
    placePicture(document, format, style);
    QTextCursor cursor{&document};
    cursor.setPosition(piece.begin);
    cursor.setPosition(piece.begin + piece.length, QTextCursor::KeepAnchor);
    cursor.setCharFormat(format);
    QTextBlockFormat whole = block.blockFormat();
    whole.setLineHeight(0, QTextBlockFormat::SingleHeight); // in hundredths it would be the picture's
    whole.setBottomMargin(0);
    QTextCursor{block}.setBlockFormat(whole);
    if (!caption.isEmpty())
        captionPicture(block, caption, style);
}

void layOutBlock(QTextDocument& document, const QTextBlock& block, const ManualStyle& style)
{
    spaceBlock(block, style);
    QTextCursor{block}.setBlockCharFormat(charFormatOf(block, {}, style)); // marks of a list
    std::vector<TextPiece> pieces;
    for (auto one = block.begin(); !one.atEnd(); ++one)
        pieces.push_back({one.fragment().position(), one.fragment().length(), one.fragment().charFormat()});
    for (TextPiece& piece : pieces) {
        if (piece.format.isImageFormat()) {
            layOutPicture(document, block, piece, style);
            continue;
        }
        QTextCursor cursor{&document};
        cursor.setPosition(piece.begin);
        cursor.setPosition(piece.begin + piece.length, QTextCursor::KeepAnchor);
        cursor.setCharFormat(charFormatOf(block, piece.format, style));
    }
}

} // namespace

void layOutManual(QTextDocument& document, const QString& markdown, const ManualStyle& style)
{
    document.clear();
    document.setDefaultFont(manualFont(style, style.look.fonts.body(), Weight::Regular));
    document.setIndentWidth(2 * style.look.fonts.body());
    document.setMarkdown(markdown);
    std::vector<QTextBlock> blocks; // as they are before any caption
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
        blocks.push_back(block);
    for (const QTextBlock& block : blocks)
        layOutBlock(document, block, style);
}

} // namespace rig
