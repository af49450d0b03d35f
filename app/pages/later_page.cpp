#include "app/pages/later_page.h"

#include <QFrame>
#include <QLabel>
#include <QVBoxLayout>

namespace rig {

LaterPage::LaterPage(const QString& title, const QString& sentence, QWidget* parent) : Page{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(16, 16, 16, 16);
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(24, 20, 24, 24);
    auto* heading = new QLabel{title};
    heading->setProperty("kind", "title");
    auto* text = new QLabel{sentence};
    text->setWordWrap(true);
    inner->addWidget(heading);
    inner->addWidget(text);
    layout->addWidget(card);
    layout->addStretch(1);
}

} // namespace rig
