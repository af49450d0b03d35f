#include "app/pages/annual/annual_panel.h"

#include "app/pages/annual/link_name.h"
#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/picture_widget.h"
#include "app/widgets/pressable.h"
#include "app/wording/annual_words.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rig {

AnnualPanel::AnnualPanel(const QString& title, const QString& legend, const char* objectName, QWidget* parent)
    : QFrame{parent}
{
    setProperty("card", true);
    setObjectName(QLatin1String(objectName));
    setAccessibleName(title);
    m_layout = new QVBoxLayout{this};
    m_layout->setContentsMargins(20, 14, 20, 16);
    m_layout->setSpacing(4);
    m_layout->addWidget(labelOf(title, "section"));
    if (!legend.isEmpty())
        m_layout->addWidget(labelOf(legend, "soft"));
    begin();
}

QVBoxLayout* AnnualPanel::begin()
{
    delete m_inside;
    m_inside = new QWidget;
    auto* layout = new QVBoxLayout{m_inside};
    layout->setContentsMargins(0, 4, 0, 0);
    layout->setSpacing(8);
    m_layout->addWidget(m_inside);
    return layout;
}

void AnnualPanel::setLook(const Look& look)
{
    m_look = look;
    for (MarkWidget* mark : findChildren<MarkWidget*>())
        mark->setLook(look);
    for (PictureWidget* picture : findChildren<PictureWidget*>())
        picture->setLook(look);
    for (Pressable* link : links())
        link->setLook(look);
}

QList<Pressable*> AnnualPanel::links() const
{
    return findChildren<Pressable*>();
}

void AnnualPanel::showPictures(const std::vector<PictureWithWords>& pictures)
{
    QVBoxLayout* layout = begin();
    for (const PictureWithWords& one : pictures) {
        if (one.picture) {
            auto* picture = new PictureWidget;
            picture->setLook(m_look);
            picture->setPicture(*one.picture, one.name);
            layout->addWidget(picture);
        }
        for (const QString& sentence : one.sentences)
            layout->addWidget(labelOf(sentence, "body"));
    }
}

QWidget* AnnualPanel::storyOf(const AnnualStory& story)
{
    QWidget* whole = story.coupling ? linkOf(story) : new QWidget;
    fill(whole, story);
    return whole;
}

QString AnnualPanel::linkTo(const AnnualStory& story) const
{
    const QByteArray place = objectName().toLatin1();
    return story.reading ? linkName(place, *story.reading) : linkName(place, *story.coupling);
}

QWidget* AnnualPanel::linkOf(const AnnualStory& story)
{
    auto* link = new Pressable;
    link->setLook(m_look);
    link->setObjectName(linkTo(story));
    link->setAccessibleName(AnnualWords::titleOf(story.title, story.state));
    link->setAccessibleDescription(story.text + QLatin1Char(' ') + AnnualWords::opensTrend());
    connect(link, &Pressable::clicked, this, [this, coupling = *story.coupling, reading = story.reading] {
        emit storyOpened(coupling, reading);
    });
    return link;
}

void AnnualPanel::fill(QWidget* whole, const AnnualStory& story) const
{
    auto* row = new QHBoxLayout{whole};
    const int edge = story.coupling ? 4 : 0;
    row->setContentsMargins(edge, edge, edge, edge);
    row->setSpacing(10);
    if (story.shape) {
        auto* mark = new MarkWidget;
        mark->setLook(m_look);
        mark->show(*story.shape, story.role);
        row->addWidget(mark, 0, Qt::AlignTop);
    }
    auto* words = new QVBoxLayout;
    words->setSpacing(1);
    words->addWidget(labelOf(AnnualWords::titleOf(story.title, story.state), "strong"));
    if (!story.text.isEmpty())
        words->addWidget(labelOf(story.text, "body"));
    row->addLayout(words, 1);
}

void AnnualPanel::showStories(const std::vector<AnnualStory>& stories, const QString& none,
                              const QString& hint)
{
    QVBoxLayout* layout = begin();
    for (const AnnualStory& story : stories)
        layout->addWidget(story.title.isEmpty() ? labelOf(story.text, "body") : storyOf(story));
    if (stories.empty())
        layout->addWidget(labelOf(none, "body"));
    else if (!hint.isEmpty())
        layout->addWidget(labelOf(hint, "soft"));
}

void AnnualPanel::showSentences(const QStringList& sentences)
{
    QVBoxLayout* layout = begin();
    for (const QString& sentence : sentences)
        layout->addWidget(labelOf(sentence, "body"));
}

} // namespace rig
