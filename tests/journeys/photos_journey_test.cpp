// A photo from the phone to the look, by keys alone: taken in without the place where it was taken, seen
// large beside the joint, and the work gone on with where it was.

#include "app/pages/rigged_today/rigged_today_page.h"
#include "app/pages/setup/setup_page.h"
#include "app/photos/photo_intake.h"
#include "tests/support/clipped.h"
#include "tests/support/hangar.h"
#include "tests/support/on_screen.h"
#include "tests/support/phone_photo.h"
#include "tests/support/scripted_prompts.h"
#include "tests/support/typing.h"
#include "tests/support/who_connected.h"

#include <QClipboard>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QGuiApplication>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTemporaryDir>
#include <QUrl>

using namespace rig;
using namespace rig::test;

namespace {

bool isSeen(const QWidget& in, const char* name)
{
    Typist::look();
    const auto all = in.findChildren<const QWidget*>(QLatin1String{name});
    return std::any_of(all.begin(), all.end(), [](const QWidget* one) { return one->isVisible(); });
}

// Set up, at the couplings.
bool isWhollySeen(const QWidget& widget)
{
    return widget.visibleRegion().boundingRect() == widget.rect();
}

class PhotosInSetUp : public testing::Test
{
protected:
    PhotosInSetUp()
    {
        showAt(page, {1280, 744});
        page.showAirframe(hangar.airframe);
        page.showPart(SetUpPart::Couplings);
        chooseIn(page, "statedBy", 1); // M. Oren
        Typist::look();
        typist.goTo("couplingPhotos");
        typist.press(Qt::Key_Return);
        Typist::look();
    }

    std::string aPhoneFile(const QByteArray& bytes)
    {
        QFile file{folder.filePath("phone.jpg")};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return file.fileName().toStdString();
    }

    std::vector<Photo> photos() { return must(store.records().learning(hangar.airframe)).photos; }

    TempStore store;
    Hangar hangar{store.records()};
    QTemporaryDir folder;
    ScriptedPrompts prompts;
    SetUpPage page{store.records(), store.clock(), prompts};
    Typist typist{page};
};

// A rigging whose first joint has a photo.
class PhotoAtTheLook : public testing::Test
{
protected:
    PhotoAtTheLook()
    {
        takeTwelve(store, hangar);
        store.clock().passMinutes(24 * 60);
        keepPhoto(hangar.leftAileron);
        showAt(page, {1280, 744});
        page.showAirframe(hangar.airframe);
        typist.goTo("leader");
        typist.press(Qt::Key_Down);
        typist.press(Qt::Key_Tab);
        typist.press(Qt::Key_Return);
        Typist::look();
        if (part(page, "seasonNext").isVisible()) {
            typist.goTo("seasonNext");
            typist.press(Qt::Key_Return);
        }
        passWhoConnected(page, typist);
    }

    void keepPhoto(CouplingId coupling)
    {
        const PhotoTaken taken = takenIn(written(halves(400, 300), "jpeg"));
        const auto& photo = std::get<TakenPhoto>(taken);
        must(store.records().add(Photo{{},
                                       coupling,
                                       PhotoOf::Locked,
                                       store.clock().now().localDay(),
                                       hangar.oren,
                                       photo.size.width(),
                                       photo.size.height(),
                                       "sleeve at its stop",
                                       {}},
                                 photo.image));
    }

    std::vector<Check> checks()
    {
        Typist::look();
        const auto open = must(store.records().openRecord(hangar.airframe));
        return must(store.records().content(*open)).checks;
    }

    TempStore store;
    Hangar hangar{store.records()};
    ScriptedPrompts prompts;
    RiggedTodayPage page{store.records(), store.clock(), prompts};
    Typist typist{page};
};

} // namespace

TEST_F(PhotosInSetUp, TakeAPictureInWithoutThePlaceWhereItWasTaken)
{
    prompts.openFiles.push_back(aPhoneFile(withTags(written(halves(400, 300), "jpeg"), tagsOfAPhone(6))));
    typist.goTo("choosePhoto");
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(typist.focused(), "photoKind");
    EXPECT_TRUE(photos().empty()) << "it is kept when somebody says so";
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_TRUE(photos().empty()) << "nobody said what it shows";
    EXPECT_TRUE(textOf(page, "photoKindProblem").starts_with("Say what the picture shows"));
    EXPECT_TRUE(isWhollySeen(part(page, "photoKindProblem")));
    typist.press(Qt::Key_Down); // locked
    typist.press(Qt::Key_Return);
    Typist::look();
    ASSERT_EQ(photos().size(), 1U);
    const Photo photo = photos().front();
    EXPECT_EQ(photo.coupling, hangar.leftAileron);
    EXPECT_EQ(photo.person, hangar.oren);
    EXPECT_EQ(photo.width, 300); // turned
    EXPECT_EQ(photo.height, 400);
    const std::string kept = must(store.records().image(photo.id)).jpeg.bytes;
    EXPECT_EQ(kept.find("Exif"), std::string::npos);
    EXPECT_EQ(kept.find("PhoneMaker1"), std::string::npos);
    EXPECT_TRUE(isSeen(page, "photo0"));

    typist.goTo("photo0");
    typist.press(Qt::Key_Return);
    EXPECT_TRUE(isSeen(page, "photoCover"));
    typist.press(Qt::Key_Escape);
    EXPECT_FALSE(isSeen(page, "photoCover"));
    EXPECT_TRUE(isSeen(page, "choosePhoto")) << "Esc closed the picture and nothing else";

    prompts.texts.push_back("it shows the right one");
    typist.goTo("withdrawPhoto0");
    typist.press(Qt::Key_Return);
    EXPECT_FALSE(isSeen(page, "photo0"));
    EXPECT_TRUE(photos().empty());
}

TEST_F(PhotosInSetUp, SayWhatIsWrongWithAFileAndKeepNothing)
{
    prompts.openFiles.push_back(aPhoneFile("Left aileron 0.45"));
    typist.goTo("choosePhoto");
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(textOf(page, "photoPictureProblem"),
              "This is no picture. Choose a JPEG, PNG, BMP or GIF file.");
    EXPECT_TRUE(isWhollySeen(part(page, "photoPictureProblem")));
    typist.press(Qt::Key_Return); // no further file: turned away
    typist.goTo("photoNote");
    typist.press(Qt::Key_Return);
    Typist::look();
    EXPECT_EQ(textOf(page, "photoPictureProblem"), "Choose, drop or paste a picture first.");
    EXPECT_TRUE(photos().empty());
}

TEST_F(PhotosInSetUp, AreDroppedAndPastedToo)
{
    QMimeData dropped;
    dropped.setUrls(
        {QUrl::fromLocalFile(QString::fromStdString(aPhoneFile(written(halves(80, 60), "jpeg"))))});
    QWidget& place = part(page, "photoPicture");
    QDragEnterEvent enter{QPoint{5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier};
    QCoreApplication::sendEvent(&place, &enter);
    QDropEvent drop{QPointF{5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier};
    QCoreApplication::sendEvent(&place, &drop);
    EXPECT_TRUE(isSeen(page, "photoWaiting"));
    typist.goTo("photoKind");
    typist.press(Qt::Key_Down);
    typist.press(Qt::Key_Down); // part-seated
    EXPECT_TRUE(isSeen(page, "photoCaution"));
    typist.press(Qt::Key_Return);
    Typist::look();
    ASSERT_EQ(photos().size(), 1U);
    EXPECT_EQ(photos().front().of, PhotoOf::PartSeated);

    QGuiApplication::clipboard()->setImage(halves(50, 40));
    typist.goTo("photoNote");
    typist.press(Qt::Key_V, Qt::ControlModifier);
    typist.press(Qt::Key_Down);
    typist.press(Qt::Key_Return);
    Typist::look();
    ASSERT_EQ(photos().size(), 2U);
    EXPECT_EQ(photos().back().width, 50);
    expectNothingClipped(page, 10);
}

TEST_F(PhotoAtTheLook, IsSeenLargeByAKeyAndTheKeysGoOnWhereTheyWere)
{
    EXPECT_TRUE(isSeen(page, "lookPhoto"));
    typist.type("y");
    EXPECT_EQ(checks().size(), 1U);
    typist.type("v");
    EXPECT_TRUE(isSeen(page, "photoCover"));
    typist.type("yn");
    EXPECT_EQ(checks().size(), 1U) << "no answer to a question that cannot be seen";
    typist.press(Qt::Key_Escape);
    EXPECT_FALSE(isSeen(page, "photoCover"));
    EXPECT_EQ(checks().size(), 1U);
    typist.type("yy");
    EXPECT_EQ(checks().size(), 3U);
    Typist ahead{page, Pace::Ahead};
    ahead.type("bb");
    EXPECT_FALSE(isSeen(page, "photoCover"));
}

TEST_F(PhotoAtTheLook, NeverStandsBeforeAStop)
{
    typist.type("n");
    EXPECT_FALSE(isSeen(page, "lookPhoto"));
    typist.type("v");
    EXPECT_FALSE(isSeen(page, "photoCover"));
}

TEST_F(PhotoAtTheLook, OfBothSidesStandSideBySideWhileItIsAskedWhetherTheyWereSwapped)
{
    keepPhoto(hangar.rightAileron);
    Question question;
    question.airframe = hangar.airframe;
    question.kind = QuestionKind::SidesSwapped;
    question.record = *must(store.records().openRecord(hangar.airframe));
    question.coupling = hangar.leftAileron;
    must(store.records().add(question));
    typist.press(Qt::Key_PageDown);
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
    typist.type("v");
    Typist::look();
    QStringList captions;
    for (const QLabel* label : part(page, "photoCover").findChildren<QLabel*>("photoCaption"))
        captions << label->text().section(QStringLiteral(" · "), 0, 0);
    EXPECT_EQ(captions, (QStringList{"Left aileron", "Right aileron"}));
    typist.press(Qt::Key_Escape);

    typist.type("n"); // a stop, which stays in sight above them
    typist.type("v");
    EXPECT_TRUE(isSeen(page, "photoCover"));
    const QWidget& stop = part(page, "stopCard");
    EXPECT_EQ(stop.visibleRegion().boundingRect(), stop.rect());
    EXPECT_GT(part(page, "photoCover").height(), 200);
}

TEST_F(PhotoAtTheLook, IsNotThereWhereNobodyTookOne)
{
    typist.press(Qt::Key_PageDown);
    EXPECT_EQ(textOf(page, "couplingTitle"), "Right aileron");
    EXPECT_FALSE(isSeen(page, "lookPhoto"));
    typist.type("v");
    EXPECT_FALSE(isSeen(page, "photoCover"));
}

TEST_F(PhotoAtTheLook, LeavesTheFirstAnswerInViewInTheSizesThatPeopleUse)
{
    struct Size
    {
        QSize window;
        double text;
    };
    for (const Size& size : {Size{{1280, 744}, 1.0}, Size{{1024, 684}, 1.0}, Size{{1280, 744}, 1.5}}) {
        SCOPED_TRACE(std::to_string(size.window.width()) + " at " + std::to_string(size.text));
        page.setLook(lookAt(size.text));
        showAt(page, size.window, lookAt(size.text));
        EXPECT_TRUE(isSeen(page, "lookPhoto"));
        expectNothingClipped(page, 10);
        const QWidget& answer = *part(page, "tile0").findChild<QPushButton*>();
        EXPECT_EQ(answer.visibleRegion().boundingRect(), answer.rect());
        EXPECT_GE(part(page, "lookPhoto").height(), size.text < 1.5 ? 120 : 60)
            << "large enough to be of use";
    }
}
