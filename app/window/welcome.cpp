#include "app/window/welcome.h"

#include "app/widgets/parts.h"
#include "app/window/recent_files.h"
#include "app/wording/window_words.h"

#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QStyle>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr int kCardOfRow = 100; // stretch: the card is as wide as it may be

} // namespace

Welcome::Welcome(QWidget* parent) : FlowScroll{new QWidget, parent}
{
    QWidget* page = widget();
    page->setProperty("page", true);
    auto* layout = new QVBoxLayout{page};
    layout->setContentsMargins(16, 16, 16, 16);
    auto* card = new QFrame;
    card->setProperty("card", true);
    card->setMaximumWidth(820);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(32, 28, 32, 28);
    inner->setSpacing(12);
    fill(inner);
    auto* middle = new QHBoxLayout; // an aligned card would not get the height that its words need
    middle->addStretch(1);
    middle->addWidget(card, kCardOfRow);
    middle->addStretch(1);
    layout->addStretch(1);
    layout->addLayout(middle);
    layout->addStretch(2);
}

void Welcome::fill(QVBoxLayout* layout)
{
    const auto button = [this, layout](const QString& text, const char* name, auto asked) {
        auto* one = buttonOf(text, name);
        one->setAutoDefault(true); // Enter presses it
        connect(one, &QPushButton::clicked, this, asked);
        layout->addWidget(one);
        return one;
    };
    layout->addWidget(labelOf(WindowWords::welcomeTitle(), "title"));
    layout->addWidget(labelOf(WindowWords::welcomeSentence(), "body"));
    m_last = button({}, "welcomeLast", [this] { emit fileAsked(m_lastPath); });
    m_last->setProperty("kind", "primary");
    m_folder = labelOf({}, "soft", "welcomeFolder");
    layout->addWidget(m_folder);
    m_new = button(WindowWords::welcomeNew(), "welcomeNew", &Welcome::newAsked);
    button(WindowWords::welcomeOpen(), "welcomeOpen", &Welcome::openAsked);
    button(WindowWords::welcomeDemo(), "welcomeDemo", &Welcome::demoAsked);
    layout->addWidget(labelOf(WindowWords::welcomeCaution(), "soft"));
    offerLast();
}

void Welcome::offerLast()
{
    constexpr int kMostLetters = 60; // of its name
    const QStringList recent = recentFiles();
    const QFileInfo last{recent.isEmpty() ? QString{} : recent.front()};
    const bool isThere = !recent.isEmpty() && last.isFile();
    m_lastPath = isThere ? last.filePath() : QString{};
    m_last->setVisible(isThere);
    m_new->setProperty("kind", isThere ? "plain" : "primary");
    m_new->style()->unpolish(m_new);
    m_new->style()->polish(m_new);
    if (isThere) {
        QString name = last.fileName();
        if (name.size() > kMostLetters)
            name = name.left(kMostLetters) + QChar{0x2026};
        m_last->setText(WindowWords::welcomeLast(name.replace(QLatin1Char('&'), QStringLiteral("&&"))));
    }
    sayIn(m_folder, isThere ? WindowWords::welcomeFolder(last.path()) : QString{});
}

void Welcome::showEvent(QShowEvent* event)
{
    offerLast();
    FlowScroll::showEvent(event);
    (m_lastPath.isEmpty() ? m_new : m_last)->setFocus();
}

} // namespace rig
