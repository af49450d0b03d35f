// The manual that the program carries: its chapters, its pictures and its links.

#include "app/report/manual.h"
#include "app/wording/language.h"

#include <QTextBlock>
#include <QTextDocument>
#include <QUrl>

#include <gtest/gtest.h>
#include <set>

namespace rig::test {
namespace {

std::vector<QTextCharFormat> formatsIn(const QTextDocument& document)
{
    std::vector<QTextCharFormat> formats;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next())
        for (auto piece = block.begin(); !piece.atEnd(); ++piece)
            formats.push_back(piece.fragment().charFormat());
    return formats;
}

} // namespace

class ManualIn : public testing::TestWithParam<const char*>
{
    Speech m_speech{GetParam()};
};
INSTANTIATE_TEST_SUITE_P(EveryLanguage, ManualIn, testing::Values("en", "de", "fr"));

TEST_P(ManualIn, HasChaptersThatBeginWithTheTitleOfTheContents)
{
    const auto chapters = manualChapters();
    ASSERT_GE(chapters.size(), 16U);
    std::set<QString> names;
    for (const ManualChapter& chapter : chapters) {
        EXPECT_TRUE(manualChapter(chapter.name).startsWith("# " + chapter.title + "\n"))
            << chapter.name.toStdString();
        names.insert(chapter.name);
    }
    EXPECT_EQ(names.size(), chapters.size());
    EXPECT_TRUE(manualChapter("nothing.md").isEmpty());
}

TEST_P(ManualIn, LeadsFromChapterToChapterAndNowhereElse)
{
    std::set<QString> names;
    for (const ManualChapter& chapter : manualChapters())
        names.insert(chapter.name);
    int links = 0;
    for (const QString& name : names) {
        QTextDocument document;
        layOutManual(document, manualChapter(name), {{}, 700, false});
        for (const QTextCharFormat& format : formatsIn(document))
            if (format.isAnchor()) {
                ++links;
                EXPECT_TRUE(names.contains(format.anchorHref())) << format.anchorHref().toStdString();
            }
    }
    EXPECT_GT(links, 5);
}

TEST_P(ManualIn, ShowsEveryPictureNoWiderThanTheText)
{
    int pictures = 0;
    for (const ManualChapter& chapter : manualChapters()) {
        QTextDocument document;
        layOutManual(document, manualChapter(chapter.name), {{}, 500, false});
        for (const QTextCharFormat& format : formatsIn(document)) {
            if (!format.isImageFormat())
                continue;
            ++pictures;
            const QString name = format.toImageFormat().name();
            const auto image = document.resource(QTextDocument::ImageResource, QUrl{name}).value<QImage>();
            EXPECT_EQ(image.width(), 500) << name.toStdString();
            EXPECT_EQ(format.toImageFormat().width(), 500);
            EXPECT_NEAR(format.toImageFormat().height(), 500 * 0.625, 1);
        }
    }
    EXPECT_GE(pictures, 10);
}

TEST(Manual, SaysUnderAPictureWhatItShows)
{
    QTextDocument document;
    layOutManual(document, "# A\n\n![What it shows](pictures/rigged-look.png)\n\nAfter it.\n",
                 {{}, 500, false});
    const QStringList lines = document.toPlainText().split('\n');
    ASSERT_EQ(lines.size(), 4);
    EXPECT_EQ(lines[2], "What it shows");
    EXPECT_EQ(lines[3], "After it.");
}

TEST(Manual, IsWrittenInTheColoursAndSizesOfTheReader)
{
    const Look look{Theme::dark(), FontSizes{1.5}};
    QTextDocument document;
    layOutManual(document, "# A title\n\nWords and **a name** and `Y`.\n", {look, 500, false});
    for (const QTextCharFormat& format : formatsIn(document))
        EXPECT_EQ(format.foreground().color(), look.theme.color(Role::Ink));
    const auto formats = formatsIn(document);
    ASSERT_GE(formats.size(), 5U);
    EXPECT_EQ(formats[0].font().pixelSize(), qRound(look.fonts.title()));
    EXPECT_EQ(formats[1].font().pixelSize(), qRound(look.fonts.body()));
    EXPECT_GT(formats[2].fontWeight(), formats[1].fontWeight());
    EXPECT_EQ(formats[4].background().color(), look.theme.color(Role::StripGround));
}

} // namespace rig::test
