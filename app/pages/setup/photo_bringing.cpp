#include "app/pages/setup/photo_bringing.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/panel_parts.h"
#include "app/photos/photo_picture.h"
#include "app/widgets/parts.h"
#include "app/wording/photo_words.h"

#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QHBoxLayout>
#include <QImage>
#include <QMimeData>
#include <QPixmap>
#include <QUrl>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr int kPreview = 110; // pixels high

bool holdsPicture(const QMimeData* data)
{
    return data && (data->hasUrls() || data->hasImage());
}

} // namespace

PhotoBringing::PhotoBringing(Prompts& prompts, QWidget* parent) : QFrame{parent}, m_prompts{prompts}
{
    setProperty("card", true);
    setAcceptDrops(true);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(12, 10, 12, 10);
    row->setSpacing(14);
    m_picture = new QLabel;
    m_picture->setObjectName("photoWaiting");
    row->addWidget(m_picture);
    auto* column = new QVBoxLayout;
    m_choose = panelButton("choosePhoto", PhotoWords::chooseFile());
    m_sentence = labelOf(PhotoWords::dropHere(), "soft", "photoSentence");
    column->addWidget(m_choose, 0, Qt::AlignLeft);
    column->addWidget(m_sentence);
    row->addLayout(column, 1);
    setFocusProxy(m_choose);
    connect(m_choose, &QPushButton::clicked, this, &PhotoBringing::choose);
    show(nullptr);
}

void PhotoBringing::show(const TakenPhoto* photo)
{
    m_waiting = photo ? std::optional{*photo} : std::nullopt;
    m_picture->setVisible(photo);
    m_sentence->setText(PhotoWords::dropHere());
    if (!photo)
        return m_picture->clear();
    const QImage picture = pictureOf(photo->image);
    m_picture->setPixmap(QPixmap::fromImage(
        picture.scaled(2 * kPreview, kPreview, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
    m_sentence->setText(photo->isFirstOfSeveral ? PhotoWords::waitingFirstOfSeveral()
                                                : PhotoWords::waiting());
}

void PhotoBringing::choose()
{
    const QString path = m_prompts.askOpenFile(this, PhotoWords::fileFilter());
    if (!path.isEmpty())
        take(takenInFile(path));
}

bool PhotoBringing::paste()
{
    const QMimeData* pasted = QApplication::clipboard()->mimeData();
    if (!holdsPicture(pasted))
        return false;
    take(*pasted);
    return true;
}

void PhotoBringing::take(const PhotoTaken& taken)
{
    if (const auto* refusal = std::get_if<PhotoRefusal>(&taken))
        return emit refused(PhotoWords::refusal(*refusal));
    show(std::get_if<TakenPhoto>(&taken));
    emit brought();
}

void PhotoBringing::take(const QMimeData& held)
{
    const QList<QUrl> urls = held.urls();
    if (urls.size() > 1)
        return emit refused(PhotoWords::notOneFile());
    if (urls.size() == 1 && urls.front().isLocalFile())
        return take(takenInFile(urls.front().toLocalFile()));
    take(takenIn(qvariant_cast<QImage>(held.imageData())));
}

void PhotoBringing::dragEnterEvent(QDragEnterEvent* event)
{
    if (holdsPicture(event->mimeData()))
        event->acceptProposedAction();
}

void PhotoBringing::dropEvent(QDropEvent* event)
{
    take(*event->mimeData());
    event->acceptProposedAction();
}

} // namespace rig
