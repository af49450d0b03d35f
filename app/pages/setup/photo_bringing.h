#pragma once

#include "app/photos/photo_intake.h"

#include <QFrame>

#include <optional>

class QLabel;
class QMimeData;
class QPushButton;

namespace rig {

class Prompts;

// Where a picture is brought: from a file, dropped, or pasted. It shows the one that waits to be kept.
class PhotoBringing : public QFrame
{
    Q_OBJECT

public:
    explicit PhotoBringing(Prompts& prompts, QWidget* parent = nullptr);

    // As it would be kept; null: none waits.
    void show(const TakenPhoto* photo);
    const TakenPhoto* waiting() const { return m_waiting ? &*m_waiting : nullptr; }
    // False when there is no picture in the clipboard.
    bool paste();

signals:
    void brought();
    void refused(const QString& sentence);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void choose();
    void take(const PhotoTaken& taken);
    void take(const QMimeData& held);

    Prompts& m_prompts;
    std::optional<TakenPhoto> m_waiting;
    QLabel* m_picture = nullptr;
    QLabel* m_sentence = nullptr;
    QPushButton* m_choose = nullptr;
};

} // namespace rig
